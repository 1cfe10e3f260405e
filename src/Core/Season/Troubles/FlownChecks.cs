using Watersown.Flight.Flown;

namespace Watersown.Season.Troubles;

/// <summary>What the kept track of a field says beside its trailer and its invoice.</summary>
public static class FlownChecks
{
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
