namespace Watersown.Wording;

/// <summary>
/// One printed sheet in words, before anything is known of fonts or paper. Every back end (web page, PDF, plain text)
/// says exactly this and nothing else.
/// </summary>
public sealed record SheetPage
{
    /// <summary>Unique among the sheets of one printing, made of small letters, digits and hyphens: the stem of its file name.</summary>
    public required string Key { get; init; }

    public required Language Language { get; init; }

    /// <summary>Which sheet it is: <c>Flight sheet</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>The largest words: the field, the day, the warehouse.</summary>
    public required string Title { get; init; }

    /// <summary>Small beside the title, such as the field's code.</summary>
    public string TitleNote { get; init; } = string.Empty;

    /// <summary>The line under the title.</summary>
    public required string Lead { get; init; }

    /// <summary>Upper corner: farm and plan number, moment of the plan.</summary>
    public required ImmutableArray<string> Corner { get; init; }

    /// <summary>
    /// The same content arranged from roomy to tight; the first that fits one page is printed, and the last goes over to a
    /// second page where none does.
    /// </summary>
    public required ImmutableArray<ImmutableArray<Block>> Arrangements { get; init; }

    /// <summary>Printed on every page of a sheet longer than one, with <c>{page}</c> and <c>{pages}</c>.</summary>
    public required string Folio { get; init; }

    /// <summary>Printed at the foot of a page that is not the last.</summary>
    public required string GoesOn { get; init; }
}

/// <summary>Words in one weight.</summary>
/// <param name="Text">What they say.</param>
/// <param name="Bold">Heavy.</param>
public sealed record Run(string Text, bool Bold = false)
{
    /// <summary>The language of these words, where it is not the sheet's.</summary>
    public Language? Speech { get; init; }
}

/// <summary>A piece of a sheet. The set is closed: each back end knows them all.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>A framed sentence that nobody may miss.</summary>
    public sealed record Banner(ImmutableArray<Run> Runs) : Block;

    /// <summary>Very large words in a heavy frame, with a list under them: what must not happen, and where.</summary>
    public sealed record Alarm(string Shout, ImmutableArray<string> Lines) : Block;

    public sealed record Heading(string Text) : Block;

    public sealed record Paragraph(ImmutableArray<Run> Runs) : Block;

    /// <summary>Numbers to be read from a cockpit.</summary>
    public sealed record Figures(ImmutableArray<Figure> Items) : Block;

    /// <summary>What is known, one line each.</summary>
    public sealed record Facts(string Caption, ImmutableArray<Fact> Rows) : Block;

    /// <summary>A ruled table.</summary>
    public sealed record Grid(string Caption, ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows) : Block
    {
        /// <summary>How many times side by side a long table is folded.</summary>
        public int Folds { get; init; } = 1;
    }

    /// <summary>A drawing to scale.</summary>
    /// <param name="Draw">Makes the drawing for a width and a height in points.</param>
    /// <param name="Least">Least height worth printing, points.</param>
    /// <param name="Most">Greatest height of use, points.</param>
    public sealed record Picture(
        [property: PlainNumber("width and height in points of paper")] Func<double, double, Drawing> Draw,
        [property: PlainNumber("points of paper")] double Least,
        [property: PlainNumber("points of paper")] double Most) : Block;

    /// <summary>Two columns.</summary>
    /// <param name="Left">Left column.</param>
    /// <param name="Right">Right column.</param>
    /// <param name="LeftShare">Share of the width that the left column gets.</param>
    public sealed record Side(ImmutableArray<Block> Left, ImmutableArray<Block> Right, Fraction LeftShare) : Block;

    /// <summary>Boxes to tick and lines to fill in.</summary>
    public sealed record Ticks(ImmutableArray<Tick> Items) : Block;
}

/// <summary>A number to be read from a distance.</summary>
/// <param name="Number">The number.</param>
/// <param name="Caption">Its unit and what it is.</param>
/// <param name="Heavy">Framed heavily: the one to act on.</param>
public sealed record Figure(string Number, ImmutableArray<Run> Caption, bool Heavy);

/// <summary>One line of what is known.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The value with its unit.</param>
/// <param name="Note">Its sum, source or age.</param>
public sealed record Fact(string Name, string Value, string Note);

/// <summary>How a column of a table is set.</summary>
public enum Setting
{
    Left,
    Right,
    Center,
}

/// <summary>A column of a table.</summary>
/// <param name="Head">Its heading.</param>
/// <param name="Setting">How it is set.</param>
public sealed record Column(string Head, Setting Setting = Setting.Left)
{
    /// <summary>Room kept for writing by hand, points; a written column takes what its words need.</summary>
    [PlainNumber("points of paper")]
    public double Room { get; init; }

    /// <summary>Widest that the column may grow, points; its words wrap beyond. 0 sets no limit.</summary>
    [PlainNumber("points of paper")]
    public double Most { get; init; }
}

/// <summary>A cell of a table: words, or a box to tick.</summary>
public sealed record Cell(ImmutableArray<Run> Runs)
{
    public static Cell Box { get; } = new([]) { IsBox = true };

    public static Cell Blank { get; } = new([]);

    public bool IsBox { get; private init; }

    public static Cell Of(string text) => new([new Run(text)]);

    public static Cell Strong(string text) => new([new Run(text, Bold: true)]);

    public static Cell Of(params ImmutableArray<Run> runs) => new(runs);
}

/// <summary>A box to tick, a line to fill in, or both.</summary>
/// <param name="Text">The words beside it.</param>
public sealed record Tick(string Text)
{
    /// <summary>A box stands before the words.</summary>
    public bool HasBox { get; init; } = true;

    /// <summary>Length of a line to write on after the words, points; none for no line.</summary>
    [PlainNumber("points of paper")]
    public double Line { get; init; }

    /// <summary>Words after the line, such as a unit.</summary>
    public string After { get; init; } = string.Empty;
}
