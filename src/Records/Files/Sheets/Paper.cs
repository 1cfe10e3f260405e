namespace Watersown.Records.Files.Sheets;

/// <summary>Letter paper and the sizes of everything on it, in points.</summary>
internal static class Paper
{
    public const double Width = 612;
    public const double Height = 792;
    public const double Margin = 31.5;

    public const double Inner = Width - (2 * Margin);

    /// <summary>A web page may break a line a hair sooner than the PDF: this much of the page is kept in reserve.</summary>
    public const double Reserve = 8;

    public const double Room = Height - (2 * Margin) - Reserve;

    public const double Body = 12;
    public const double BodyLine = 14.5;

    /// <summary>Units, sources and ages beside a figure.</summary>
    public const double Small = 10.5;
    public const double SmallLine = 12.5;

    public const double Heading = 14;
    public const double HeadingLine = 17;

    public const double Gap = 4;
    public const double ColumnGap = 14;

    public const double CellSide = 4;
    public const double CellTop = 2;

    public const double Box = 12.5;
    public const double BoxRow = 18;

    public const double Hairline = 0.5;
    public const double Line = 1.25;
    public const double Bar = 3;
}
