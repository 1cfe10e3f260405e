using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>A sheet with its arrangement chosen, its pictures sized and its pages cut.</summary>
internal sealed record FittedSheet(SheetPage Page, ImmutableArray<ImmutableArray<Block>> Pages)
{
    /// <summary><c>Page 1 of 2</c>; empty on a sheet of one page.</summary>
    public string Folio(int index) => Pages.Length == 1
        ? string.Empty
        : Template.Fill(Page.Folio, ("page", Number(index)), ("pages", Number(Pages.Length - 1)));

    /// <summary>Said at the foot of a page that is not the last; empty otherwise.</summary>
    public string GoesOn(int index) => index + 1 >= Pages.Length
        ? string.Empty
        : Template.Fill(Page.GoesOn, ("page", Number(index)), ("pages", Number(Pages.Length - 1)));

    private static string Number(int index) => Say.Number(index + 1);
}
