namespace Watersown.Quantities;

/// <summary>An amount of money in the farm's own currency (US dollars unless the farm says otherwise).</summary>
public readonly record struct Money(decimal Amount) : IComparable<Money>
{
    public static Money Zero => default;

    public static Money FromDollars(decimal value) => new(value);

    /// <summary>Rounds to a tenth of a cent; meant for sums that come out of a calculation.</summary>
    public static Money FromDollars(double value) => new(Math.Round((decimal)Finite.Require(value), 3));

    public static Money operator +(Money left, Money right) => new(left.Amount + right.Amount);

    public static Money operator -(Money left, Money right) => new(left.Amount - right.Amount);

    public static Money operator *(Money money, double factor) => FromDollars((double)money.Amount * factor);

    public static bool operator <(Money left, Money right) => left.Amount < right.Amount;

    public static bool operator >(Money left, Money right) => left.Amount > right.Amount;

    public static bool operator <=(Money left, Money right) => left.Amount <= right.Amount;

    public static bool operator >=(Money left, Money right) => left.Amount >= right.Amount;

    public int CompareTo(Money other) => Amount.CompareTo(other.Amount);
}
