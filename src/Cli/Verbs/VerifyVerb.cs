using System.CommandLine;
using Watersown.Documents.Tracks;
using Watersown.Flight;
using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Records.Flight;
using Watersown.Records.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Holds the track of an aeroplane against the edge of a field.</summary>
internal sealed class VerifyVerb
{
    private readonly Option<string> boundary = new("--boundary") { Description = "The edge of the field: GeoJSON, shapefile, KML or GPX.", Required = true };
    private readonly Option<string> track = new("--track") { Description = "What was flown: GPX, NMEA 0183, GeoJSON, KML, or CSV with headings.", Required = true };
    private readonly Option<double> swath = Bounded(new Option<double>("--swath-ft") { Description = "How wide a pass sows, feet.", Required = true }, 1, 500);
    private readonly Option<string?> field = new("--field") { Description = "Code or name of the field, where the edge file holds several." };
    private readonly Option<string[]> columns = new("--columns") { Description = "What columns are, by heading or number from 1: lat=3, lon=4, time, date, height, speed, course, gate." };
    private readonly Option<string?> gate = new("--gate-column") { Description = "The column that tells the gate; for NMEA a sentence and its field, such as PGATE.1." };
    private readonly Option<bool> withoutTimes = new("--no-time") { Description = "Leave the track's times unread, where they are wrong." };
    private readonly Option<double?> cell = Bounded(new Option<double?>("--cell-ft") { Description = "Side of the cells that are counted; without it a twentieth of the swath, half a meter at most." }, 0.05, 100);
    private readonly Option<double?> rate = Bounded(new Option<double?>("--rate-lb-ac") { Description = "Dry seed asked for: tells what the skipped land did not get." }, 0.1, 2000);
    private readonly Option<double?> planned = Bounded(new Option<double?>("--planned-deg") { Description = "The heading planned, from true north: tells how far off its lines it was flown." }, 0, 360);
    private readonly Option<double> lag = Bounded(new Option<double>("--lag-s") { Description = "From the gate's signal to seed leaving, seconds." }, 0, 10);
    private readonly Option<double?> height = Bounded(new Option<double?>("--height-ft") { Description = "Height of flight. With it runs are moved on by lag, throw and wind." }, 1, 1000);
    private readonly Option<double> terminal = Bounded(new Option<double>("--fall-mps") { Description = "Speed at which the seed would fall in still air, m/s.", DefaultValueFactory = _ => 6.5 }, 0.5, 50);
    private readonly Option<double> wind = Bounded(new Option<double>("--wind-mph") { Description = "Wind while it was flown, mph." }, 0, 80);
    private readonly Option<double> from = Bounded(new Option<double>("--wind-from-deg") { Description = "Where that wind came from, from true north." }, 0, 360);
    private readonly SeedOptions seed = new();
    private readonly Option<string?> folder = new("--handout") { Description = "Also write the field and what was flown as GeoJSON, KML, GPX, shapefiles and ISO 11783-10 into this folder: new, empty, or written into before." };
    private readonly Option<bool> exact = new("--exact") { Description = "Also work out skipped, single and doubled land by the outlines of the swaths, without cells: slower." };
    private readonly Option<string?> pdf = new("--pdf") { Description = "Also write one page of PDF: map, figures, where to walk, and whether the invoice agrees." };
    private readonly Option<bool> replace = new("--replace") { Description = "What is at --pdf already may go." };
    private readonly Option<double?> billedAcres = Bounded(new Option<double?>("--billed-ac") { Description = "Acres on the invoice, to hold against what was flown." }, 0.01, 100_000);
    private readonly Option<double?> billedPounds = Bounded(new Option<double?>("--billed-lb") { Description = "Soaked pounds on the invoice; with --soaked-out-lb." }, 1, 1e7);
    private readonly Option<string?> invoice = new("--invoice") { Description = "Number or name of the invoice, for the page." };
    private readonly Option<bool> json = new("--json") { Description = "Answer in JSON." };
    private readonly Option<string> language = LanguageOption.Create();

    public static Command Create(Edge edge)
    {
        var verb = new VerifyVerb();
        var command = new Command("verify", "Hold a track against a field: what was flown, skipped, flown twice, and how far each figure can be off.")
        {
            verb.boundary, verb.track, verb.swath, verb.field, verb.columns, verb.gate, verb.withoutTimes, verb.cell, verb.rate, verb.planned,
            verb.lag, verb.height, verb.terminal, verb.wind, verb.from, verb.folder, verb.exact, verb.pdf, verb.replace, verb.billedAcres, verb.billedPounds, verb.invoice, verb.json, verb.language,
        };
        verb.seed.AddTo(command);
        command.SetAction((parsed, stop) => verb.RunAsync(edge, parsed, stop));
        return command;
    }

    private async Task<int> RunAsync(Edge edge, ParseResult parsed, CancellationToken stop)
    {
        var speaks = LanguageOption.Of(parsed, language);
        var told = TrackReading.Columns(parsed.GetValue(columns) ?? []);
        if (told.IsRefused) return await RefuseAsync(edge, told.Problems, speaks);
        var known = parsed.GetValue(gate) is { } named ? told.Value.SetItem(TrackColumn.Gate, named) : told.Value;
        var file = parsed.GetValue(track)!;
        var verified = await VerifyTrack.RunAsync(
            new VerifyRequest(parsed.GetValue(boundary)!, file, edgeOf => Ask(parsed, edgeOf))
            {
                Field = parsed.GetValue(field),
                WithoutTimes = parsed.GetValue(withoutTimes),
                Options = new TrackOptions { Columns = known },
                Progress = Progress(edge, file, speaks),
            },
            stop);
        if (verified.IsRefused) return await RefuseAsync(edge, verified.Problems, speaks);
        await LanguageOption.TellAsync(edge, verified.Problems, speaks);
        if (parsed.GetValue(folder) is { } into)
        {
            var name = parsed.GetValue(field) ?? Path.GetFileNameWithoutExtension(parsed.GetValue(boundary)!);
            var written = WriteHandout.Run(FlownHandout.Of(verified.Value.Report, name, edge.Time.GetLocalNow()), into, speaks);
            if (written.IsRefused) return await RefuseAsync(edge, written.Problems, speaks);
        }

        var areas = parsed.GetValue(exact) ? ExactAreas.Of(verified.Value.Report, Path.GetFileName(file)) : (Outcome<LayerAreas>?)null;
        if (areas is { IsRefused: true }) return await RefuseAsync(edge, areas.Problems, speaks);
        var matches = Matches(parsed, verified.Value.Report);
        if (parsed.GetValue(pdf) is { } page)
        {
            var name = parsed.GetValue(field) ?? Path.GetFileNameWithoutExtension(parsed.GetValue(boundary)!);
            var paper = new FlownPaper(name, Path.GetFileName(file)) { Matches = matches, Invoice = parsed.GetValue(invoice), Made = edge.Time.GetLocalNow() };
            var written = WriteFlownPage.Run(FlownPage.Of(verified.Value.Report, paper, new Telling(speaks, metric: false, paper.Made)), page, paper.Made, parsed.GetValue(replace));
            if (written.IsRefused) return await RefuseAsync(edge, written.Problems, speaks);
        }

        var telling = new FlownTelling(Words.In(speaks), metric: false);
        await edge.Out.WriteLineAsync(parsed.GetValue(json)
            ? FlownDocument.ToJson(verified.Value.Report, verified.Value.Told, telling, areas?.Value)
            : FlownText.Of(verified.Value, (matches, areas?.Value), telling, Words.In(speaks).Flown));
        return ExitCode.Done;
    }

    private FlownMatches Matches(ParseResult parsed, FlownReport report) => FlownAccounts.Of(new FlownAccount(report.Net, report.Flown, report.Net * report.Skip.Error.Share)
    {
        Seed = report.Question is { Out: { } seed, Rate: { } asked } ? SeedLeftOver.Of(new SownSeed(seed.Soaked, SoakedSeed.Zero, report.Net, asked) { WetFactor = seed.Factor }) : null,
        BilledLand = parsed.GetValue(billedAcres) is { } acres ? Area.FromAcres(acres) : null,
        BilledSeed = parsed.GetValue(billedPounds) is { } pounds ? SoakedSeed.FromPounds(pounds) : null,
    });

    private FlownQuestion Ask(ParseResult parsed, Boundary edgeOf) => new(edgeOf, Length.FromFeet(parsed.GetValue(swath)))
    {
        Cell = parsed.GetValue(cell) is { } side ? Length.FromFeet(side) : null,
        Rate = parsed.GetValue(rate) is { } pounds ? SeedRate.FromPoundsPerAcre(pounds) : null,
        Shape = seed.Shape(parsed),
        Out = seed.Out(parsed),
        Planned = parsed.GetValue(planned) is { } degrees ? Bearing.FromDegrees(degrees) : null,
        Carry = parsed.GetValue(height) is { } feet
            ? new SeedCarry(TimeSpan.FromSeconds(parsed.GetValue(lag)), Length.FromFeet(feet), Speed.FromMetersPerSecond(parsed.GetValue(terminal)), Bearing.FromDegrees(parsed.GetValue(from)), Speed.FromMilesPerHour(parsed.GetValue(wind)))
            : null,
    };

    private static async Task<int> RefuseAsync(Edge edge, ImmutableArray<Problem> problems, Language speaks)
    {
        await LanguageOption.TellAsync(edge, problems, speaks);
        return ExitCode.ProblemsInInput;
    }

    // Only a person waits; a script reads the error stream for problems.
    private static Action<long, Area>? Progress(Edge edge, string file, Language speaks)
    {
        if (!edge.ErrorIsTerminal || !File.Exists(file) || new FileInfo(file).Length is not (> 8 << 20 and var length)) return null;
        var telling = new FlownTelling(Words.In(speaks), metric: false);
        return (read, sown) => edge.Error.Write(read >= length ? "\r\u001b[K" : "\r\u001b[K" + Template.Fill(Words.In(speaks).Flown.Reading, ("percent", Say.Number(100.0 * read / length)), ("land", telling.Land(sown))));
    }

    private static Option<T> Bounded<T>(Option<T> option, double least, double most)
    {
        option.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<T>() is double given && !(given >= least && given <= most) && r.Tokens.Count > 0)
                r.AddError(FormattableString.Invariant($"{option.Name} must lie between {least} and {most}. Give a number in that range."));
        });
        return option;
    }
}
