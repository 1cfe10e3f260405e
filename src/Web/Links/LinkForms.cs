using System.Globalization;
using System.Text;
using Watersown.Flight;
using Watersown.Land;
using Watersown.Records.Files.Sheets;
using Watersown.Schedule.Sheets;
using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>The answers of a link as small forms that work without a script.</summary>
/// <param name="scope">What the link may hear about.</param>
/// <param name="path">Where the forms are sent.</param>
/// <param name="newName">Makes the name that a form carries, so that sending it twice tells once.</param>
internal sealed class LinkForms(LinkScope scope, string path, Func<string> newName)
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private readonly StringBuilder html = new(4096);

    private readonly Telling tell = scope.Tell;

    private LinkWords Words => tell.Words.Link;

    public string Write()
    {
        foreach (var flight in scope.Flights) Flight(flight);
        foreach (var job in scope.Seed) Seed(job);
        if (scope.Sheet.Kind == LinkKind.Day) Group(tell.ShortDay(scope.Sheet.Day), LinkSheet.Name(LinkKind.Day), Talk);
        return html.ToString();
    }

    /// <summary>The answers of one field of the route.</summary>
    public string Stop(Field field)
    {
        html.Clear();
        Water(field);
        return html.ToString();
    }

    private void Flight(FlightSheet flight)
    {
        var name = LinkAnswers.FlightName(flight);
        var title = flight.Field.Name + " (" + name + "), " + tell.Moment(flight.From);
        if (scope.Role == CrewRole.Dispatcher)
        {
            Group(title, name, Talk);
            return;
        }

        if (scope.Role != CrewRole.Pilot) Group(title, name, () => Loads(flight));
        if (scope.Role == CrewRole.Loader) return;
        Group(title, name, () =>
        {
            Number("loads", Words.Loads, 1, 300, flight.Loads.Count);
            Button("flown", Template.Fill(Words.Flown, ("field", name)));
        });
        if (!flight.Field.Basins.IsEmpty)
        {
            Group(title, name, () =>
            {
                Number("loads", Words.Loads, 1, 300, null);
                Number("check", Words.ToCheck, 1, flight.Field.Basins.Length, null);
                Button("part", Template.Fill(Words.PartFlown, ("field", name)));
            });
        }

        Group(Template.Fill(Words.NotFlying, ("field", name)), name, () =>
        {
            Button("off:wind", Words.Wind);
            Button("off:rain", Words.Rain);
            Button("off:fog", Words.Fog);
            Button("off:other", Words.OtherReason);
        });
    }

    private void Loads(FlightSheet flight)
    {
        var gone = scope.LoadsGone(flight.Field.Code);
        var left = Enumerable.Range(1, flight.Loads.Count).Where(n => !gone.Contains(n)).ToList();
        if (left.Count == 0) html.Append(Plain, $"<p>{Text(Template.Fill(Words.LoadsDone, ("n", Telling.Count(flight.Loads.Count))))}</p>");
        foreach (var n in left) Button("load:" + n.ToString(Plain), Template.Fill(Words.LoadGone, ("n", Telling.Count(n))));
    }

    private void Talk()
    {
        Button("agreed", Words.Agreed);
        Button("heard", Words.Heard);
        Button("cannot", Words.Cannot);
    }

    private void Seed(SeedJob job)
    {
        var about = job.Batch ?? string.Join('+', job.Fields);
        var name = job.Batch ?? tell.Words.Day.Batch + " " + about;
        if (!job.Soaking && !job.Drained) One("soak", Words.InSoak);
        if (!job.Drained) One("drained", Words.Drained);
        Group(name + ", " + string.Join(", ", job.Fields), about, () =>
        {
            Named(job);
            Input("trailer", Words.TrailerNumber, "maxlength=\"20\" required");
            Number("weight", Template.Fill(Words.ScaleWeight, ("unit", tell.MassUnit)), 100, 60_000, null, needed: false);
            Ago();
            Button("left", Template.Fill(Words.TrailerLeft, ("batch", name)));
        });

        void One(string answer, string words) => Group(name + ", " + string.Join(", ", job.Fields), about, () =>
        {
            Named(job);
            Ago();
            Button(answer, Template.Fill(words, ("batch", name)));
        });
    }

    private void Named(SeedJob job)
    {
        if (job.Batch is null) Input("batch", tell.Words.Day.Batch, "maxlength=\"20\" required");
    }

    private void Water(Field field) => Group(field.Name + " (" + field.Code + ")", field.Code, () =>
    {
        if (!field.Basins.IsEmpty)
        {
            var next = Math.Min(field.Basins.Length, (scope.Plan.State.Season(field.Code).ChecksWet ?? 0) + 1);
            Number("check", Words.Check, 1, field.Basins.Length, next);
            Ago();
            Button("wet", Words.Wet);
            Button("full", Words.Full);
        }

        html.Append(Plain, $"<b class=\"row\">{Text(tell.Words.Water.Depth)}</b>");
        foreach (var depth in tell.Metric ? MetricDepths : InchDepths)
            Button(depth, tell.Depth(tell.Metric ? WaterDepth.FromMeters(Figure(depth) / 100) : WaterDepth.FromInches(Figure(depth))));
    });

    private static readonly string[] InchDepths = ["depth:0 in", "depth:1 in", "depth:2 in", "depth:3 in", "depth:4 in", "depth:6 in", "depth:8 in"];

    private static readonly string[] MetricDepths = ["depth:0 cm", "depth:3 cm", "depth:5 cm", "depth:8 cm", "depth:10 cm", "depth:15 cm", "depth:20 cm"];

    private static double Figure(string answer) => double.Parse(answer["depth:".Length..^3], Plain);

    private void Group(string title, string about, Action body)
    {
        html.Append(Plain, $"<form method=\"post\" action=\"{path}\"><fieldset><legend>{Text(title)}</legend><input type=\"hidden\" name=\"id\" value=\"{newName()}\"><input type=\"hidden\" name=\"about\" value=\"{Text(about)}\">");
        body();
        html.Append("</fieldset></form>\n");
    }

    private void Button(string answer, string words) => html.Append(Plain, $"<button name=\"answer\" value=\"{Text(answer)}\">{Text(words)}</button>");

    private void Number(string name, string words, int least, int most, int? value, bool needed = true) =>
        Input(name, words, string.Create(Plain, $"type=\"number\" inputmode=\"numeric\" min=\"{least}\" max=\"{most}\"{(value is { } v ? " value=\"" + v.ToString(Plain) + "\"" : string.Empty)}{(needed ? " required" : string.Empty)}"));

    private void Input(string name, string words, string rest) => html.Append(Plain, $"<label>{Text(words)} <input name=\"{name}\" {rest}></label>");

    private void Ago() => html.Append(Plain,
        $"<label>{Text(Words.When)} <select name=\"ago\"><option value=\"\">{Text(Words.Now)}</option><option value=\"1h\">{Text(Words.HourAgo)}</option><option value=\"3h\">{Text(Words.ThreeHoursAgo)}</option><option value=\"night\">{Text(Words.LastNight)}</option></select></label>");

    private static string Text(string words) => SheetMarkup.Text(words);
}
