using System.Runtime.CompilerServices;

namespace Watersown.Quantities;

/// <summary>Keeps what is not a number out of every quantity: once inside Core it would be a bug, not bad input.</summary>
internal static class Finite
{
    public static double Require(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "A quantity must be a finite number.");
}
