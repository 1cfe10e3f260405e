using System.Globalization;
using System.Net;
using Watersown.Documents.Json;

namespace Watersown.Web;

/// <summary>How the desk is started.</summary>
public sealed record DeskOptions
{
    public const string DefaultUrl = "http://127.0.0.1:5080";

    /// <summary>The book: a file, or the connection text of a database.</summary>
    public string Book { get; init; } = "watersown.book";

    /// <summary>The farm document that a new book starts from.</summary>
    public string? Farm { get; init; }

    /// <summary>Addresses that are listened at.</summary>
    public ImmutableArray<Uri> Urls { get; init; } = [new Uri(DefaultUrl)];

    /// <summary>The address under which others know the desk, where a server in front of it has one.</summary>
    public Uri? PublicName { get; init; }

    /// <summary>Requests come through a server on this machine, whose word about addresses is taken.</summary>
    public bool BehindProxy { get; init; }

    /// <summary>An owner to make, where the book has none of that name.</summary>
    public string? Owner { get; init; }

    /// <summary>The clock starts at this moment and runs on: for showing a farm on a day of a story.</summary>
    public WrittenMoment? At { get; init; }

    /// <summary>Folder of the desk's own pages; none is a desk without pages, for tests and programs.</summary>
    public string? Pages { get; init; }

    /// <summary>Where map tiles come from, where the farm wants any: nothing is asked of anybody otherwise.</summary>
    public Uri? Tiles { get; init; }

    /// <summary>How long a plan is searched for after something changed.</summary>
    public TimeSpan PlanBudget { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How long it must be quiet before a change is planned for.</summary>
    public TimeSpan PlanQuiet { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>Plan again after changes without being asked.</summary>
    public bool PlansItself { get; init; } = true;

    /// <summary>Copies of the book are made in this folder every day; none makes none.</summary>
    public string? Copies { get; init; }

    /// <summary>How many days a copy is kept; the last one always is.</summary>
    public int CopyDays { get; init; } = 14;

    /// <summary>Others can reach the desk: somebody must sign in.</summary>
    public bool ReachableByOthers => BehindProxy || PublicName is not null || Urls.Any(u => !IsOwnMachine(u));

    /// <summary>The first address that is not this machine's own, for saying why.</summary>
    public string ReachedAt => PublicName?.ToString() ?? Urls.FirstOrDefault(u => !IsOwnMachine(u))?.ToString() ?? "--behind-proxy";

    /// <summary>An address that only programs of this machine can reach.</summary>
    public static bool IsOwnMachine(Uri url)
    {
        var host = url.Host.Trim('[', ']');
        return string.Equals(host, "localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(host, out var address) && IPAddress.IsLoopback(address));
    }
}

/// <summary>Reads the words after the command.</summary>
public static class OptionReading
{
    private static readonly ImmutableDictionary<string, Func<DeskOptions, string, DeskOptions?>> Known = new Dictionary<string, Func<DeskOptions, string, DeskOptions?>>(StringComparer.Ordinal)
    {
        ["--book"] = (o, v) => o with { Book = v },
        ["--farm"] = (o, v) => o with { Farm = v },
        ["--urls"] = (o, v) => Urls(v) is { IsEmpty: false } urls ? o with { Urls = urls } : null,
        ["--port"] = (o, v) => int.TryParse(v, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= 65_535 ? o with { Urls = [new UriBuilder(DeskOptions.DefaultUrl) { Port = port }.Uri] } : null,
        ["--public-name"] = (o, v) => Web(v) is { } url ? o with { PublicName = url } : null,
        ["--behind-proxy"] = (o, v) => v.Length == 0 ? o with { BehindProxy = true } : null,
        ["--owner"] = (o, v) => string.IsNullOrWhiteSpace(v) ? null : o with { Owner = v.Trim() },
        ["--at"] = (o, v) => Moment(v) is { } at ? o with { At = at } : null,
        ["--pages"] = (o, v) => o with { Pages = v },
        ["--tiles"] = (o, v) => Web(v) is { } url ? o with { Tiles = url } : null,
        ["--plan-seconds"] = (o, v) => double.TryParse(v, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var s) && s is > 0 and <= 600 ? o with { PlanBudget = TimeSpan.FromSeconds(s) } : null,
        ["--copies"] = (o, v) => o with { Copies = v },
        ["--copy-days"] = (o, v) => int.TryParse(v, NumberStyles.None, CultureInfo.InvariantCulture, out var days) && days is >= 1 and <= 3650 ? o with { CopyDays = days } : null,
    }.ToImmutableDictionary(StringComparer.Ordinal);

    private static readonly ImmutableDictionary<string, string> Wanted = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["--urls"] = "addresses such as http://0.0.0.0:5080, more than one parted by ;",
        ["--port"] = "a port number from 0 to 65535",
        ["--public-name"] = "the address that others use, such as https://desk.example.org",
        ["--behind-proxy"] = "it alone, without a value",
        ["--owner"] = "a name",
        ["--at"] = "a moment such as 2026-05-08T04:50, by the farm's clock",
        ["--tiles"] = "the https address of a tile source",
        ["--copies"] = "a folder, or none",
        ["--copy-days"] = "a number of days from 1 to 3650",
        ["--plan-seconds"] = "a number of seconds from above 0 to 600",
    }.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>The options, or everything that is wrong with the words.</summary>
    public static Outcome<DeskOptions> Read(IReadOnlyList<string> words)
    {
        var options = new DeskOptions { Pages = Path.Combine(AppContext.BaseDirectory, "pages") };
        var problems = new List<Problem>();
        for (var i = 0; i < words.Count; i++)
        {
            var name = words[i];
            if (!name.StartsWith("--", StringComparison.Ordinal))
            {
                options = options with { Farm = name };
                continue;
            }

            if (!Known.TryGetValue(name, out var apply))
            {
                problems.Add(HostProblems.UnknownOption.At(string.Empty, ("value", name), ("known", string.Join(", ", Known.Keys.Order(StringComparer.Ordinal)))));
                continue;
            }

            var value = name == "--behind-proxy" || i + 1 >= words.Count ? string.Empty : words[++i];
            if ((name == "--behind-proxy" || value.Length > 0) && apply(options, value) is { } next) options = next;
            else problems.Add(HostProblems.BadOption.At(name, ("value", value), ("limit", Wanted.GetValueOrDefault(name, "a name"))));
        }

        return problems.Count > 0 ? Outcome<DeskOptions>.Refuse(problems) : Outcome<DeskOptions>.Of(options);
    }

    // Without an offset it is what the farm's own clock shows.
    private static WrittenMoment? Moment(string value)
    {
        if (!DateTimeOffset.TryParse(value, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)) return null;
        var wall = new WrittenMoment(new DateOnly(at.Year, at.Month, at.Day), TimeOnly.FromTimeSpan(at.TimeOfDay), null);
        return value.EndsWith('Z') || (value.Length > 16 && value[^6] is '+' or '-') ? wall with { Offset = at.Offset } : wall;
    }

    private static ImmutableArray<Uri> Urls(string value)
    {
        var parts = value.Split([';', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Web).ToList();
        return parts.Contains(null) ? [] : [.. parts.OfType<Uri>()];
    }

    private static Uri? Web(string value) =>
        // A star or a plus is every address of the machine.
        Uri.TryCreate(value.Replace("//*", "//0.0.0.0", StringComparison.Ordinal).Replace("//+", "//0.0.0.0", StringComparison.Ordinal), UriKind.Absolute, out var url)
        && (url.Scheme == Uri.UriSchemeHttp || url.Scheme == Uri.UriSchemeHttps) ? url : null;
}
