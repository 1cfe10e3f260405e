using Watersown.Documents.Farms;
using Watersown.Documents.Logbooks;
using Watersown.Records.Database;
using Watersown.Season;

namespace Watersown.Records.Season;

/// <summary>Step: read a season out of a book.</summary>
public static class OpenSeason
{
    private const int MarksAtOnce = 5_000;

    /// <summary>The season at a moment; refused where the book has no farm yet.</summary>
    public static async Task<Outcome<SeasonBook>> RunAsync(Book book, DateTimeOffset now, CancellationToken stop = default)
    {
        if (await book.LatestFarmAsync(stop) is not { } farm) return Outcome<SeasonBook>.Refuse(SeasonFileProblems.NoFarm.At(string.Empty));
        var ground = FarmReading.Read(farm.Document, new FarmContext(farm.Saved));
        if (ground.IsRefused) return Outcome<SeasonBook>.Refuse(ground.Problems);
        var (log, _) = await MarksAsync(book, Logbook.Empty, 0, stop);
        return Outcome<SeasonBook>.Of(SeasonFold.Fold(ground.Value, log, now));
    }

    /// <summary>A logbook with the marks that were kept after a number, and the number of the last.</summary>
    public static async Task<(Logbook Log, long Upto)> MarksAsync(Book book, Logbook log, long upto, CancellationToken stop)
    {
        while (true)
        {
            var more = await book.MarksAfterAsync(upto, MarksAtOnce, stop);
            if (more.IsEmpty) return (log, upto);
            // A mark that this program cannot read stays in the book and goes to the phones; here it counts for nothing.
            log = log.With(more.Select(m => MarkReading.Read(System.Text.Encoding.UTF8.GetBytes(m.Mark.Body))).Where(m => m.HasValue).Select(m => m.Value));
            upto = more[^1].Seq;
        }
    }
}
