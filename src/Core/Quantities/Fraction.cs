namespace Watersown.Quantities;

/// <summary>A plain share, 0 to 1 in code; percent exists only on screen and on the wire.</summary>
public readonly record struct Fraction : IComparable<Fraction>
{
    private Fraction(double share) => Share = Finite.Require(share);

    public static Fraction Zero => default;

    public static Fraction One => new(1);

    public double Share { get; }

    public double Percent => Share * 100;

    public static Fraction FromShare(double value) => new(value);

    public static Fraction FromPercent(double value) => new(value / 100);

    public static Fraction operator *(Fraction left, Fraction right) => new(left.Share * right.Share);

    public static bool operator <(Fraction left, Fraction right) => left.Share < right.Share;

    public static bool operator >(Fraction left, Fraction right) => left.Share > right.Share;

    public static bool operator <=(Fraction left, Fraction right) => left.Share <= right.Share;

    public static bool operator >=(Fraction left, Fraction right) => left.Share >= right.Share;

    public int CompareTo(Fraction other) => Share.CompareTo(other.Share);
}
