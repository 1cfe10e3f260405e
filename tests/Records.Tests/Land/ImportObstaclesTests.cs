using System.Text;
using Watersown.Flight.Hazards;
using Watersown.Land;
using Watersown.Records.Files.Obstacles;

namespace Watersown.Records.Land;

public sealed class ImportObstaclesTests : IDisposable
{
    private const string Head = "  CURRENCY DATE = 04/16/26\r\n           OBSTACLES\r\n     NUMBER\r\n----------\r\n";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void What_stands_near_a_field_is_named_as_from_the_file_of_its_day_and_the_far_is_passed_over()
    {
        var run = Run(Head + Near("06-000001", "39 00 18.00N") + "\r\n" + Near("06-000002", "41 00 18.00N") + "\r\n");
        Assert.Empty(run.Problems);
        Assert.Equal((2, 0), (run.Value.Found.Read, run.Value.Found.LeftOut));
        var hazard = Assert.Single(run.Value.State.Farm.Hazards, h => h.Listing is not null);
        Assert.Equal(("tower 06-000001", new DateOnly(2026, 4, 16)), (hazard.Name, hazard.Listing!.FileOf));
        Assert.Null(hazard.Confirmed);
        Assert.Equal(250, hazard.Listing.Within!.Value.Feet, 1e-9);
    }

    [Fact]
    public void The_written_document_read_again_lists_the_same()
    {
        var run = Run(Head + Near("06-000001", "39 00 18.00N") + "\n");
        var again = Path.Combine(folder.FullName, "again.json");
        File.WriteAllBytes(again, run.Value.Document.ToArray());
        var (was, found) = (run.Value.State.Farm.Hazards[^1], OpenFarm.Run(again).Value.Farm.Hazards[^1]);
        Assert.Equal(was.Listing! with { Within = null, HeightWithin = null, Top = null }, found.Listing! with { Within = null, HeightWithin = null, Top = null });
        Assert.Equal((250.0, 50.0, 240.0), (Math.Round(found.Listing!.Within!.Value.Feet, 9), Math.Round(found.Listing.HeightWithin!.Value.Feet, 9), Math.Round(found.Listing.Top!.Value.Feet, 9)));
    }

    [Fact]
    public void A_newer_file_stands_in_for_the_older_one_and_a_look_of_the_farm_is_kept()
    {
        var first = Run(Head + Near("06-000001", "39 00 18.00N") + "\n" + Near("06-000003", "39 00 20.00N") + "\n");
        var looked = first.Value.State.Farm.Hazards.Select(h => h.Listing?.Id == "06-000001" ? h with { Confirmed = new DateOnly(2026, 5, 1) } : h);
        var farm = Path.Combine(folder.FullName, "farm2.json");
        File.WriteAllBytes(farm, Documents.Farms.FarmWriting.Write(first.Value.State with { Farm = first.Value.State.Farm with { Hazards = [.. looked] } }).ToArray());
        var second = ImportObstacles.Run(farm, Write("two.dat", Head.Replace("04/16", "05/01", StringComparison.Ordinal) + Near("06-000001", "39 00 18.00N") + "\n"), Length.FromMiles(5), TimeProvider.System);
        Assert.Equal(2, second.Value.Before);
        Assert.Equal(["farm's own mast", "tower 06-000001"], second.Value.State.Farm.Hazards.Select(h => h.Name));
        Assert.Equal(new DateOnly(2026, 5, 1), second.Value.State.Farm.Hazards[^1].Confirmed);
    }

    // 250 ft unsure and 5 miles: a tower whose point lies just beyond may stand within.
    [Theory]
    [InlineData(8046.72, true)]
    [InlineData(8046.72 + 76.2, true)]
    [InlineData(8046.72 + 80, false)]
    public void A_point_counts_as_near_if_it_may_stand_near(double meters, bool near)
    {
        var farm = OpenFarm.Run(Farm()).Value.Farm;
        var reach = FieldsReach.Of(farm, Length.FromMiles(5))!;
        var plane = FarmPlane.At(new GeoPoint(39, -122));
        var place = plane.ToPlace(new Shapes.PlanePoint(0, -(meters - 0.5)));
        Assert.Equal(near, reach.Holds(place, Length.FromFeet(250)));
    }

    [Fact]
    public void Bad_lines_are_told_by_number_and_do_not_stop_the_rest()
    {
        var bad = Near("06-000001", "XX 00 18.00N");
        var run = Run(Head + bad + "\r\n" + Near("06-000002", "39 00 18.00N") + "\r\nshort\r\n");
        Assert.Equal((1, 2), (run.Value.Found.Read, run.Value.Found.LeftOut));
        Assert.Equal([ObstacleProblems.BadLine, ObstacleProblems.BadLine], run.Problems.Select(p => p.Kind));
        Assert.Equal(["one.dat:5", "one.dat:7"], run.Problems.Select(p => p.Where));
        Assert.StartsWith("bad latitude", Wording.Say.Sentence(run.Problems[0], Wording.Language.English), StringComparison.Ordinal);
        Assert.StartsWith("latitud mala", Wording.Say.Sentence(run.Problems[0], Wording.Language.Spanish), StringComparison.Ordinal);
    }

    [Fact]
    public void Many_bad_lines_are_counted_after_the_first_twenty()
    {
        var run = Run(Head + string.Concat(Enumerable.Repeat("x\n", 25)) + Near("06-000002", "39 00 18.00N"));
        Assert.Equal(20, run.Problems.Count(p => p.Kind == ObstacleProblems.BadLine));
        Assert.Equal("5", Assert.Single(run.Problems, p => p.Kind == ObstacleProblems.MoreBadLines).Facts["value"]);
    }

    [Fact]
    public void A_line_that_never_ends_costs_no_more_than_a_long_one() =>
        Assert.Equal(ObstacleProblems.NothingRead, Run(Head + new string('7', 3_000_000)).Problems[^1].Kind);

    [Fact]
    public void An_old_file_and_one_without_a_head_are_told()
    {
        Assert.Contains(Run(Head.Replace("04/16/26", "01/15/26", StringComparison.Ordinal) + Near("06-000001", "39 00 18.00N")).Problems, p => p.Kind == ObstacleProblems.OldFile);
        Assert.Equal(ObstacleProblems.NoCurrency, Assert.Single(Run(Near("06-000001", "39 00 18.00N")).Problems).Kind);
        Assert.Equal(ObstacleProblems.NoCurrency, Assert.Single(Run(string.Empty).Problems).Kind);
    }

    [Fact]
    public void A_farm_without_a_place_has_nothing_near()
    {
        var farm = Write("bare.json", """
            { "watersown_farm": 1, "name": "Bare", "time_zone": "America/Los_Angeles", "now": "2026-05-08T04:50", "fields": [ { "code": "N4", "name": "Two Gates", "net_ac": 225, "rate_dry_lb_ac": 150, "stage": "rolled" } ] }
            """);
        Assert.Contains(ImportObstacles.Run(farm, Write("one.dat", Head), Length.FromMiles(5), TimeProvider.System).Problems, p => p.Kind == ObstacleProblems.NowhereToLook);
    }

    private static string Near(string id, string latitude) => ObstacleLineReference.Line(id: id + " O US CA SOMEWHERE       ", latitude: latitude);

    private Outcome<ImportedObstacles> Run(string text) => ImportObstacles.Run(Farm(), Write("one.dat", text), Length.FromMiles(5), TimeProvider.System);

    private string Write(string name, string text)
    {
        var path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, text, Encoding.ASCII);
        return path;
    }

    private string Farm() => Write("farm.json", """
        { "watersown_farm": 1, "name": "Small", "time_zone": "America/Los_Angeles", "now": "2026-05-08T04:50", "season_year": 2026,
          "hazards": [ { "kind": "tower", "name": "farm's own mast", "near": ["N4"] } ],
          "fields": [ { "code": "N4", "name": "Two Gates", "net_ac": 225, "rate_dry_lb_ac": 150, "stage": "rolled", "center": { "lat_deg": 39, "lon_deg": -122 } } ] }
        """);
}
