using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Watersown.Flight;
using Watersown.Schedule;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>
/// Turns what was tapped behind a link into a mark. Only what stands on the sheet can be answered about; whatever else a
/// request says is refused.
/// </summary>
internal static class LinkAnswers
{
    private const double WettestTrailerPounds = 60_000;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>The mark of an answer.</summary>
    /// <param name="scope">What the link may hear about.</param>
    /// <param name="given">The fields of the form.</param>
    public static Outcome<Mark> Read(LinkScope scope, IReadOnlyDictionary<string, string> given)
    {
        var answer = Of(given, "answer").Split(':', 2);
        if (answer[0] == "undo") return Undo(scope, given, answer.ElementAtOrDefault(1));
        var fact = FactOf(scope, given, answer[0], answer.ElementAtOrDefault(1) ?? string.Empty, Of(given, "about"));
        return fact.Map(f => new Mark
        {
            Id = IdOf(given),
            Happened = Happened(scope, Of(given, "ago")),
            Entered = scope.Now,
            By = scope.Person.Name,
            Device = scope.Device,
            Sure = Sureness.Told,
            Note = f is Told && answer[0] == "cannot" ? scope.Tell.Words.Link.Cannot : null,
            Fact = f,
        });
    }

    /// <summary>
    /// The same button of the same page gives the same name however often it is pressed; another button of that page another.
    /// </summary>
    private static MarkId IdOf(IReadOnlyDictionary<string, string> given)
    {
        var said = string.Join('\n', ((string[])["id", "answer", "about", "loads", "check", "trailer", "weight", "batch"]).Select(k => Of(given, k)));
        return new MarkId(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(said)))[..MarkId.Digits]);
    }

    private static Outcome<MarkFact> FactOf(LinkScope scope, IReadOnlyDictionary<string, string> given, string what, string more, string about)
    {
        if (scope.Flights.FirstOrDefault(f => FlightName(f) == about) is { } flight && scope.Sheet.Kind == LinkKind.Flight) return OfFlight(scope, given, what, more, flight);
        if (scope.Sheet.Kind == LinkKind.Seed && (scope.Seed.Any(j => j.Batch == about) || scope.Seed.Any(j => j.Batch is null && string.Join('+', j.Fields) == about))) return OfSeed(scope, given, what, about);
        if (scope.Water.FirstOrDefault(f => f.Code == about) is { } field) return OfWater(given, what, more, field.Code, field.Basins.Length);
        if (what is "agreed" or "heard" or "cannot" && scope.Sheet.Kind == LinkKind.Day) return Answered(scope, what, null);
        return NoAnswer(what, about);
    }

    /// <summary>Names one flight among those of its day.</summary>
    public static string FlightName(FlightSheet flight) => flight.Part.Of > 1 ? string.Create(Plain, $"{flight.Field.Code}/{flight.Part.Number}") : flight.Field.Code;

    private static Outcome<MarkFact> OfFlight(LinkScope scope, IReadOnlyDictionary<string, string> given, string what, string more, FlightSheet flight)
    {
        var field = flight.Field.Code;
        var part = flight.Part.Of > 1 ? flight.Part.Number.ToString(Plain) : null;
        switch (what)
        {
            case "load":
                return Whole(more, 1, flight.Loads.Count).Map<MarkFact>(n => new LoadGone(field, n) { Soaked = WeightOf(flight, n) });
            case "flown":
                return Whole(Of(given, "loads"), 1, 300).Map<MarkFact>(n => new FieldSown(field) { Loads = n, Batch = flight.Seed.Batch, Dry = n == flight.Loads.Count ? flight.Dry : null, Part = part, Land = part is null ? null : flight.Land });
            case "part":
                return Whole(Of(given, "check"), 1, Math.Max(1, flight.Field.Basins.Length)).Then(check => Whole(Of(given, "loads"), 1, 300).Map<MarkFact>(n =>
                    new FieldSown(field) { Loads = n, Batch = flight.Seed.Batch, Part = scope.Tell.Words.Link.ToCheck + " " + check.ToString(Plain), Land = ToCheck(flight, check) }));
            case "off":
                return more switch
                {
                    "wind" => Off(StandDownReason.Wind),
                    "rain" => Off(StandDownReason.Rain),
                    "fog" => Off(StandDownReason.Fog),
                    "other" => Off(StandDownReason.Other),
                    _ => NoAnswer(what, more),
                };
            case "agreed" or "heard" or "cannot":
                return Answered(scope, what, flight);
            default:
                return NoAnswer(what, field);
        }

        Outcome<MarkFact> Off(StandDownReason why) => Outcome<MarkFact>.Of(new StoodDown(scope.Sheet.Day, scope.Person.Name, why) { Field = field });
    }

    private static Outcome<MarkFact> Answered(LinkScope scope, string what, FlightSheet? flight)
    {
        var about = flight is null ? LinkSheet.Name(scope.Sheet.Kind) : "sow " + FlightName(flight);
        var message = string.Create(Plain, $"{about} {scope.Sheet.Day:yyyy-MM-dd} {scope.Person.Name}");
        // A refusal is an answer: it was heard, and the note says what came back.
        var state = what == "agreed" ? ToldState.Agreed : ToldState.Heard;
        return Outcome<MarkFact>.Of(new Told(message, scope.Person.Name, state)
        {
            Role = scope.Person.Role,
            Plan = scope.Plan.Number,
            Steps = flight is null ? [] : [new ToldStep(flight.Field.Code, PlanTaskKind.Sow, flight.From)],
        });
    }

    private static Outcome<MarkFact> OfSeed(LinkScope scope, IReadOnlyDictionary<string, string> given, string what, string about)
    {
        var job = scope.Seed.First(j => j.Batch == about || (j.Batch is null && string.Join('+', j.Fields) == about));
        var batch = job.Batch ?? Of(given, "batch").Trim();
        if (batch.Length is 0 or > 20) return NoAnswer(what, batch);
        switch (what)
        {
            case "soak":
                return Outcome<MarkFact>.Of(new BatchInSoak(batch) { Lot = job.Lot, Variety = job.Variety, Dry = job.Dry, MeantFor = [.. job.Fields] });
            case "drained":
                return Outcome<MarkFact>.Of(new BatchDrained(batch));
            case "left":
                var trailer = Of(given, "trailer").Trim();
                if (trailer.Length is 0 or > 20) return NoAnswer(what, trailer);
                var written = Of(given, "weight");
                var seen = new TrailerSeen(trailer) { Batch = batch, Field = job.Fields is [var only] ? only : null, Place = scope.Plan.State.Farm.Strips.FirstOrDefault()?.Name };
                if (written.Length == 0) return Outcome<MarkFact>.Of(seen);
                var most = scope.Tell.Metric ? SoakedSeed.FromPounds(WettestTrailerPounds).Kilograms : WettestTrailerPounds;
                return Whole(written, 100, (int)most).Map<MarkFact>(n => seen with { Weighed = scope.Tell.Metric ? SoakedSeed.FromKilograms(n) : SoakedSeed.FromPounds(n) });
            default:
                return NoAnswer(what, about);
        }
    }

    private static Outcome<MarkFact> OfWater(IReadOnlyDictionary<string, string> given, string what, string more, string field, int checks)
    {
        if (what == "depth" && more.Split(' ') is [var number, "in" or "cm"] && double.TryParse(number, NumberStyles.AllowDecimalPoint, Plain, out var depth) && depth is >= 0 and <= 90)
        {
            var read = more.EndsWith("cm", StringComparison.Ordinal) ? WaterDepth.FromMeters(depth / 100) : WaterDepth.FromInches(depth);
            return checks == 0 ? Outcome<MarkFact>.Of(new DepthRead(field, null, read)) : Whole(Of(given, "check"), 1, checks).Map<MarkFact>(c => new DepthRead(field, c, read));
        }

        if (what is not ("wet" or "full")) return NoAnswer(what, more);
        return Whole(Of(given, "check"), 1, Math.Max(1, checks)).Map<MarkFact>(c => new CheckWater(field, c, what == "wet" ? WaterSeen.Wet : WaterSeen.Full));
    }

    private static Outcome<Mark> Undo(LinkScope scope, IReadOnlyDictionary<string, string> given, string? which)
    {
        if (scope.Said.FirstOrDefault(l => l.Mark.Id.Text == which) is not { Standing: Standing.Stands } line) return Outcome<Mark>.Refuse(LinkProblems.NotAnAnswer.At(string.Empty, ("value", "undo")));
        if (scope.Now - line.Mark.Entered > SeasonLimits.UndoFor)
            return Outcome<Mark>.Refuse(LinkProblems.TooLate.At(string.Empty, ("limit", SeasonLimits.UndoFor.TotalMinutes.ToString("0", Plain))));
        return Outcome<Mark>.Of(new Mark
        {
            Id = IdOf(given),
            Happened = scope.Now,
            Entered = scope.Now,
            By = scope.Person.Name,
            Device = scope.Device,
            Replaces = line.Mark.Id,
            Fact = new Withdrawn(),
        });
    }

    // "Last night" is eight in the evening before, as the farm's clock shows it.
    private static DateTimeOffset Happened(LinkScope scope, string ago) => ago switch
    {
        "1h" => scope.Now.AddHours(-1),
        "3h" => scope.Now.AddHours(-3),
        "night" => FarmTime.Midnight(scope.Plan.State, scope.Tell.Day(scope.Now)).AddHours(-4),
        _ => scope.Now,
    };

    private static SoakedSeed WeightOf(FlightSheet flight, int load)
    {
        var shares = LoadTally.Shares((int)Math.Round(flight.Soaked.Pounds, MidpointRounding.AwayFromZero), flight.Loads.Count);
        return SoakedSeed.FromPounds(shares[load - 1]);
    }

    private static Area? ToCheck(FlightSheet flight, int check) =>
        flight.Field.Basins.IsEmpty ? null : flight.Field.Basins.Take(check).Aggregate(Area.Zero, (sum, b) => sum + b.Area);

    private static Outcome<int> Whole(string text, int least, int most) =>
        int.TryParse(text.Trim().Replace(",", string.Empty, StringComparison.Ordinal), NumberStyles.None, Plain, out var number) && number >= least && number <= most
            ? Outcome<int>.Of(number)
            : Outcome<int>.Refuse(LinkProblems.BadFigure.At(string.Empty, ("value", Say.Short(text)), ("least", least.ToString(Plain)), ("limit", most.ToString(Plain))));

    private static Outcome<MarkFact> NoAnswer(string what, string about) =>
        Outcome<MarkFact>.Refuse(LinkProblems.NotAnAnswer.At(string.Empty, ("value", Say.Short((what + " " + about).Trim()))));

    private static string Of(IReadOnlyDictionary<string, string> given, string key) => given.GetValueOrDefault(key, string.Empty);
}
