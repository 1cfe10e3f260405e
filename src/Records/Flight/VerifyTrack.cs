using System.Security;
using Watersown.Documents.Tracks;
using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;

namespace Watersown.Records.Flight;

/// <summary>Which files, and what is asked of them.</summary>
/// <param name="BoundaryPath">A file of boundaries.</param>
/// <param name="TrackPath">The track.</param>
/// <param name="Ask">The question about a field, once its edge is known.</param>
public sealed record VerifyRequest(string BoundaryPath, string TrackPath, Func<Boundary, FlownQuestion> Ask)
{
    /// <summary>Code or name of the field, where the file holds several.</summary>
    public string? Field { get; init; }

    public TrackOptions Options { get; init; } = new();

    /// <summary>Told of the bytes read so far and of the land they sowed; none where nobody waits.</summary>
    public Action<long, Area>? Progress { get; init; }

    /// <summary>Leaves the times of the track unread.</summary>
    public bool WithoutTimes { get; init; }
}

/// <summary>What came of it.</summary>
/// <param name="Report">What was flown.</param>
/// <param name="Told">What the file told besides its places.</param>
public sealed record VerifiedTrack(FlownReport Report, TrackTold Told);

/// <summary>Holds the track of a file against the edge of a file.</summary>
public static class VerifyTrack
{
    public static async Task<Outcome<VerifiedTrack>> RunAsync(VerifyRequest asked, CancellationToken stop)
    {
        var field = MapFile.Open(asked.BoundaryPath).Then(all => Choose(all, asked));
        if (!field.HasValue || field.Refusals.Any()) return Outcome<VerifiedTrack>.Refuse(field.Problems);
        var question = asked.Ask(field.Value);
        var soFar = asked.Progress is null ? null : new FlownSoFar(question.Field, question.Swath);
        var sieve = new TrackSieve(field.Value) { Kept = soFar is null ? null : soFar.Add };
        var options = asked.Progress is { } tell ? asked.Options with { Progress = read => tell(read, soFar!.Sown) } : asked.Options;
        var told = await ReadAsync(asked with { Options = options }, sieve, stop);
        ImmutableArray<Problem> problems = [.. field.Problems, .. told.Problems];
        if (told.IsRefused) return Outcome<VerifiedTrack>.Refuse(problems);
        var file = Path.GetFileName(asked.TrackPath);
        var report = Verification.Of(sieve.Finish(), question, file);
        problems = [.. problems, .. report.Problems];
        return report.HasValue ? Outcome<VerifiedTrack>.Of(new VerifiedTrack(report.Value, told.Value), problems) : Outcome<VerifiedTrack>.Refuse(problems);
    }

    private static Outcome<Boundary> Choose(ImmutableArray<MapBoundary> all, VerifyRequest asked)
    {
        ImmutableArray<MapBoundary> meant = asked.Field is { } name ? [.. all.Where(b => b.Codes.Concat(b.Names).Contains(name, StringComparer.OrdinalIgnoreCase))] : all;
        if (meant is [var one]) return Outcome<Boundary>.Of(one.Edge);
        var names = string.Join(", ", all.Select(b => b.Codes.Concat(b.Names).FirstOrDefault() ?? b.Where).Take(20));
        return Outcome<Boundary>.Refuse(VerifyProblems.WhichField.At(Path.GetFileName(asked.BoundaryPath), ("value", asked.Field ?? "-"), ("known", names)));
    }

    private static async Task<Outcome<TrackTold>> ReadAsync(VerifyRequest asked, TrackSieve sieve, CancellationToken stop)
    {
        try
        {
            await using var stream = new FileStream(asked.TrackPath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1 << 17);
            return await TrackReading.ReadAsync(stream, Path.GetFileName(asked.TrackPath), asked.WithoutTimes ? fix => sieve.Add(fix with { Seconds = double.NaN }) : sieve.Add, asked.Options, stop);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Outcome<TrackTold>.Refuse(FileProblems.NotThere.At(asked.TrackPath));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException)
        {
            return Outcome<TrackTold>.Refuse(FileProblems.NotReadable.At(asked.TrackPath, ("value", failure.Message.TrimEnd('.'))));
        }
    }
}

/// <summary>What can be wrong with what a track is held against.</summary>
public static class VerifyProblems
{
    public static ProblemKind WhichField { get; } = new("FLOWN-004", ProblemWeight.Refuse,
        "'{value}' is not the name of one boundary in it; it holds {known}. Name one of them with --field.",
        "'{value}' no es el nombre de un solo lindero; el archivo tiene {known}. Nombre uno de ellos con --field.");
}
