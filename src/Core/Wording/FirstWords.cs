namespace Watersown.Wording;

/// <summary>Words of the first evening: a pasted list becomes a farm.</summary>
public sealed partial record FirstWords
{
    public required string Title { get; init; }

    public required string Lead { get; init; }

    public required string Link { get; init; }

    public required string Farm { get; init; }

    public required string FarmUsual { get; init; }

    public required string List { get; init; }

    public required string ListHint { get; init; }

    public required string Rate { get; init; }

    public required string Read { get; init; }

    public required string Understood { get; init; }

    public required string Columns { get; init; }

    public required string ColumnOut { get; init; }

    public required string ColumnGuessed { get; init; }

    public required string ColumnNumber { get; init; }

    public required string MeansName { get; init; }

    public required string MeansCode { get; init; }

    public required string MeansNet { get; init; }

    public required string MeansGross { get; init; }

    public required string MeansCertified { get; init; }

    public required string MeansChecks { get; init; }

    public required string MeansRate { get; init; }

    public required string MeansDry { get; init; }

    public required string MeansVariety { get; init; }

    public required string MeansStage { get; init; }

    public required string Totals { get; init; }

    public required string TotalsLead { get; init; }

    public required string Problems { get; init; }

    public required string TableTitle { get; init; }

    public required string Line { get; init; }

    public required string Name { get; init; }

    public required string Save { get; init; }

    public required string Replace { get; init; }

    public required string ReplaceAsk { get; init; }

    public required string ReplaceYes { get; init; }

    public required string ReplaceNo { get; init; }

    public required string PutBack { get; init; }

    public required string Saving { get; init; }

    public required string NoHost { get; init; }

    public required string SignIn { get; init; }

    public required string Refused { get; init; }

    public required string Saved { get; init; }

    public required string Ask { get; init; }

    public required string AskWhen { get; init; }

    public required string AskLeft { get; init; }

    public required string AskSown { get; init; }

    public required string AskFull { get; init; }

    public required string AskSoaking { get; init; }

    public required string AskNot { get; init; }

    public required string AskNone { get; init; }

    public required string AskAnswered { get; init; }

    public required string ToBoard { get; init; }

    public required string ToLand { get; init; }

    public required string ToWater { get; init; }
}
