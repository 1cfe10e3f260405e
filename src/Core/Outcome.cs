namespace Watersown;

/// <summary>
/// What a decision or an import gives back: a value, what is wrong, or a value with warnings. A value and refusals
/// can stand side by side, as when 38 of 40 boundaries could be read.
/// </summary>
public sealed class Outcome<T>
    where T : notnull
{
    private readonly T? value;

    private Outcome(T? value, bool hasValue, ImmutableArray<Problem> problems) =>
        (this.value, HasValue, Problems) = (value, hasValue, problems);

    public bool HasValue { get; }

    /// <summary>Everything found, refusals and warnings, in the order found.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>The value; reading it where there is none is a bug.</summary>
    public T Value => HasValue ? value! : throw new InvalidOperationException("There is no value: " + string.Join("; ", Problems.Select(p => p.Kind.Code)));

    public IEnumerable<Problem> Refusals => Problems.Where(p => p.Kind.Weight == ProblemWeight.Refuse);

    public IEnumerable<Problem> Warnings => Problems.Where(p => p.Kind.Weight == ProblemWeight.Warn);

    public bool IsRefused => !HasValue;

    public static Outcome<T> Of(T value) => new(value, hasValue: true, []);

    public static Outcome<T> Of(T value, IEnumerable<Problem> problems) => new(value, hasValue: true, [.. problems]);

    public static Outcome<T> Refuse(params IEnumerable<Problem> problems) => new(default, hasValue: false, [.. problems]);

    /// <summary>Applies a step that cannot fail to the value, keeping the problems.</summary>
    public Outcome<TNext> Map<TNext>(Func<T, TNext> step)
        where TNext : notnull => HasValue ? Outcome<TNext>.Of(step(Value), Problems) : Outcome<TNext>.Refuse(Problems);

    /// <summary>Applies a step that can fail to the value, gathering the problems of both.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> step)
        where TNext : notnull
    {
        if (!HasValue) return Outcome<TNext>.Refuse(Problems);
        var next = step(Value);
        ImmutableArray<Problem> all = [.. Problems, .. next.Problems];
        return next.HasValue ? Outcome<TNext>.Of(next.Value, all) : Outcome<TNext>.Refuse(all);
    }
}
