namespace Watersown.Records.Season;

/// <summary>What can be wrong with asking for a season's files.</summary>
public static class SeasonFileProblems
{
    public static ProblemKind NoFarm { get; } = new("YEAR-001", ProblemWeight.Refuse,
        "the book has no farm yet. Bring one in with 'farm', or open the desk and paste a list.",
        "el libro aún no tiene finca. Tráigala con 'farm', o abra el escritorio y pegue una lista.");
}
