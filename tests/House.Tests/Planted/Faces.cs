// Violations on purpose: the rule about interfaces must report the first and not the second.
namespace Watersown.Planted;

internal interface ILonely
{
    int Age { get; }
}

internal interface IShared
{
    int Age { get; }
}

internal sealed class OnlyOne : ILonely, IShared
{
    public int Age => 1;
}

internal sealed class AnotherOne : IShared
{
    public int Age => 2;
}
