namespace Watersown.Wording;

public sealed partial record BookWords
{
    public static BookWords English { get; } = new()
    {
        Title = "The farm's book",
        LastCopy = "Last copy",
        LastChecked = "{day} {clock}, {age}, checked",
        NoneYet = "none yet",
        Off = "this host makes none",
        Unknown = "not heard from the host yet",
        Kept = "Copies",
        KeptSaid = "{n}; each is kept {days} days, the last one always",
        Failed = "No copy of the book was made {age}: {why}",
        CopyNow = "Make a copy now",
        Copying = "Copying and checking",
        Whole = "The whole farm as one file",
        WholeLead = "Farm, marks, plans, photos and people, as one zip of plain parts. No passwords, no links.",
        Take = "Take the whole farm away",
        Bring = "A whole-farm file to bring in",
        BringLead = "What it has and this book has not is added. Nothing is replaced.",
        BringNow = "Bring it in",
        Bringing = "Looking through the file",
        Brought = "Brought in: {marks} marks, {farms} versions of the farm, {plans} plans, {photos} photos, {people} people.",
        NoAnswer = "The host did not answer. Nothing is known to have been kept.",
    };
}
