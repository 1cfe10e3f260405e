namespace Watersown.Season;

/// <summary>
/// The farm document was true at a moment of its own. A mark from before it still tells the story and fills what the
/// document did not know, but never turns back what it says.
/// </summary>
/// <param name="AsOf">When the document was true.</param>
internal readonly record struct GroundTime(DateTimeOffset AsOf)
{
    public bool IsOlderThan(Mark mark) => mark.Happened >= AsOf;
}
