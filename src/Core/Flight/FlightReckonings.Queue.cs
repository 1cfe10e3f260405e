using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Aeroplanes waiting for the loader.</summary>
public static partial class FlightReckonings
{
    private static Reckoning AtTheLoader => new(
        "strip-queue",
        "How many loads leave in an hour when aeroplanes share the loaders?",
        [
            new("aircraft", KeyKind.WholeNumber, string.Empty, "aeroplanes") { Least = 1, Most = 50 },
            new("flight_min", KeyKind.Number, "min", "from leaving the loader to coming back") { Least = 0.05, Most = 1440 },
            new("load_min", KeyKind.Number, "min", "at the loader for one load") { Least = 0.05, Most = 1440 },
            new("loaders", KeyKind.WholeNumber, string.Empty, "loaders side by side; one where not given") { Least = 1, Most = 20, Optional = true },
        ],
        [
            Result("loads_per_h_random", "loads/h", "with times scattered at random: the low end"), Result("loads_per_h_clockwork", "loads/h", "with every time on its mean: the high end"),
            Result("wait_min", "min", "mean wait before loading, times at random"), Result("loader_busy", string.Empty, "share of time the loader works, times at random"),
            Result("waiting", string.Empty, "mean number of aeroplanes waiting"), Result("at_strip", string.Empty, "mean number waiting or loading"),
        ],
        Sources.FiniteQueue,
        "aircraft=3 flight_min=3.5 load_min=1.5",
        ReckonQueue)
    { Limits = "The long run of a steady day; reality lies between the two figures." };

    private static Outcome<Reckoned> ReckonQueue(ReckoningInput given)
    {
        var round = new LoaderRound(given.Whole("aircraft"), TimeSpan.FromMinutes(given.Number("flight_min")), TimeSpan.FromMinutes(given.Number("load_min"))) { Loaders = given.NumberOrNone("loaders") is { } several ? (int)several : 1 };
        var state = StripWaiting.Random(round);
        var clockwork = StripWaiting.Clockwork(round);
        var working = Working.Empty
            .Given("N", "aeroplanes", round.Aircraft, string.Empty, "typed")
            .Given("F", "flight for one load", round.Flight.TotalMinutes, "min", "typed")
            .Given("s", "loading", round.Load.TotalMinutes, "min", "typed")
            .Given("c", "loaders", round.Loaders, string.Empty, round.Loaders == 1 ? "one" : "typed")
            .Step("P0", "share of time nobody is at the loader", state.AtStrip[0].Share, string.Empty, "1 / Σ w(n), w(n) = w(n − 1) × (N − n + 1) (s / F) / min(n, c), w(0) = 1", Sources.FiniteQueue)
            .Step("B", "share of time a loader works", state.Busy.Share, string.Empty, "Σ min(n, c) P(n) / c", Sources.FiniteQueue)
            .Step("X", "loads in an hour, times at random", state.LoadsPerHour, "loads/h", "60 c B / s", Sources.FiniteQueue)
            .Step("Wq", "mean wait", state.Wait.TotalMinutes, "min", "mean number waiting / X", Sources.FiniteQueue)
            .Step("Xc", "loads in an hour, like clockwork", clockwork, "loads/h", "60 × the smaller of N / (F + s) and c / s", Sources.Arithmetic);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("loads_per_h_random", state.LoadsPerHour), ("loads_per_h_clockwork", clockwork),
                ("wait_min", state.Wait.TotalMinutes), ("loader_busy", state.Busy.Share), ("waiting", state.Waiting), ("at_strip", state.Present),
            ],
            working)
        {
            Cautions = ["No one walks up to a running aeroplane. A loader who hurries spills, and worse.", PilotDecides],
        });
    }
}
