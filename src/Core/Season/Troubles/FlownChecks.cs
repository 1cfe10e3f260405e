using Watersown.Flight.Deposit;
using Watersown.Flight.Flown;
using Watersown.Land;

namespace Watersown.Season.Troubles;

/// <summary>What the kept track of a field says beside its trailer and its invoice.</summary>
public static class FlownChecks
{
    /// <summary>What a track over a field is asked: its rate, the tested pattern of the aeroplane, and what went out by the scale.</summary>
    [Source(nameof(Sources.Definition), "the field's rate, the first aeroplane with a test, seed in less seed left")]
    public static FlownQuestion Ask(SeasonBook book, string code, Boundary edge, Length swath)
    {
        var rate = book.State.Season(code).Rate;
        return new FlownQuestion(edge, swath)
        {
            Rate = rate > SeedRate.Zero ? rate : null,
            Shape = book.State.Aeroplanes.Select(a => a.Tested).FirstOrDefault(t => t is { IsWhole: true }) is { } test ? LateralShape.Of(test) : null,
            Out = SownChecks.Of(book, code)?.Answer is { } sown && sown.OutDry > DrySeed.Zero ? new SeedOut(sown.Out, sown.Seed.WetFactor) : null,
        };
    }

    /// <summary>The matches of a field; none while no track was held against it.</summary>
    [Source(nameof(Sources.MassBalance), "the newest track, seed in and left, the newest invoice")]
    public static FlownMatches? Of(SeasonBook book, string code)
    {
        var told = book.Field(code);
        if (told.Track is not { Look: var look } || look.Net <= Area.Zero) return null;
        return FlownAccounts.Of(new FlownAccount(look.Net, look.Flown, look.Net * look.SkipError.Share)
        {
            Seed = SownChecks.Of(book, code)?.Answer,
            BilledLand = told.Billed?.Land,
            BilledSeed = told.Billed?.Soaked,
        });
    }
}
