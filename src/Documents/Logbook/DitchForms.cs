using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of how water is led.</summary>
internal static class DitchForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<DitchesJoined>("ditches",
            [Need("source", Text, "source code"), Need("other", Text, "code of the other source"), Need("state", new Outline.Word(["joined", "parted"]), "led together or not")],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.Text("other", f.Other);
                pen.Text("state", f.Joined ? "joined" : "parted");
            },
            f => new DitchesJoined(f.Text("source")!, f.Text("other")!, f.Text("state") == "joined")),
        Of<CapShared>("shared-cap",
            [Need("name", Text, "the farm's name for the cap"), May("sources", new Outline.Several(Text, 100), "codes of the sources under it"), May(LandLimits.Cap, "the most they may give together; no such cap any more where not given")],
            (pen, f) =>
            {
                pen.Text("name", f.Name);
                pen.Texts("sources", f.Sources.AsArray());
                pen.Number(LandLimits.Cap.Key, f.Cap?.CubicFeetPerSecond);
            },
            f => new CapShared(f.Text("name")!, [.. f.Texts("sources")]) { Cap = f.Number(LandLimits.Cap) is { } cap ? FlowRate.FromCubicFeetPerSecond(cap) : null }),
        Of<TailwaterWaits>("tailwater-waits",
            [Need("source", Text, "source code"), May("fields", new Outline.Several(Text, 1000), "codes of the fields whose water it is"), May(LandLimits.NeedsFull, "acres of them that must be full; none where not given")],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.Texts("fields", f.Fields.AsArray());
                pen.Number(LandLimits.NeedsFull.Key, f.Full?.Acres);
            },
            f => new TailwaterWaits(f.Text("source")!, [.. f.Texts("fields")]) { Full = f.Number(LandLimits.NeedsFull) is { } acres ? Area.FromAcres(acres) : null }),
    ];
}
