using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Something placed on paper, points from the upper left corner of what it belongs to.</summary>
internal abstract record Mark
{
    private Mark()
    {
    }

    public abstract Mark Moved(double right, double down);

    /// <summary>Words; <paramref name="Y"/> is the base line.</summary>
    public sealed record Words(string Text, double X, double Y, Face Face, double Size) : Mark
    {
        public override Mark Moved(double right, double down) => this with { X = X + right, Y = Y + down };
    }

    public sealed record Rule(double X1, double Y1, double X2, double Y2, double Width) : Mark
    {
        public override Mark Moved(double right, double down) => this with { X1 = X1 + right, Y1 = Y1 + down, X2 = X2 + right, Y2 = Y2 + down };
    }

    public sealed record Frame(double X, double Y, double Width, double Height, double Stroke, Ink Fill) : Mark
    {
        public override Mark Moved(double right, double down) => this with { X = X + right, Y = Y + down };
    }

    public sealed record Picture(Drawing Drawing, double X, double Y) : Mark
    {
        public override Mark Moved(double right, double down) => this with { X = X + right, Y = Y + down };
    }
}

/// <summary>A piece laid out: how high it is, and what is on it.</summary>
internal sealed record Laid(double Height, ImmutableArray<Mark> Marks)
{
    public static Laid Nothing { get; } = new(0, []);

    /// <summary>Pieces one under another.</summary>
    public static Laid Stack(IEnumerable<Laid> pieces, double gap)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double down = 0;
        foreach (var piece in pieces)
        {
            if (marks.Count > 0 || down > 0) down += gap;
            foreach (var mark in piece.Marks) marks.Add(mark.Moved(0, down));
            down += piece.Height;
        }

        return new Laid(down, marks.ToImmutable());
    }
}
