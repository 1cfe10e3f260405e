using Watersown.Documents.Json;
using Watersown.Season;

namespace Watersown.Documents.Logbooks;

/// <summary>Marks as JSON: one mark on one line, or a list of them.</summary>
public static class MarkDocument
{
    /// <summary>One mark, UTF-8, no line end. The same mark gives the same bytes.</summary>
    public static ReadOnlyMemory<byte> Write(Mark mark)
    {
        using var pen = new JsonPen(indented: false);
        pen.Thing(null, () => Write(pen, mark));
        return pen.Line();
    }

    /// <summary>A list of marks, UTF-8, no line end.</summary>
    public static ReadOnlyMemory<byte> Write(IEnumerable<Mark> marks)
    {
        using var pen = new JsonPen(indented: false);
        Write(pen, null, marks);
        return pen.Line();
    }

    /// <summary>A list of marks inside another document.</summary>
    public static void Write(JsonPen pen, string? key, IEnumerable<Mark> marks) =>
        pen.List(key, marks, mark => pen.Thing(null, () => Write(pen, mark)));

    private static void Write(JsonPen pen, Mark mark)
    {
        var form = mark.Fact is UnknownFact ? null : FactForms.Of(mark.Fact);
        pen.Text("id", mark.Id.Text);
        pen.Text("kind", form?.Kind ?? ((UnknownFact)mark.Fact).Kind);
        pen.Instant("happened", mark.Happened);
        pen.Instant("entered", mark.Entered);
        pen.Text("by", mark.By);
        pen.Text("device", mark.Device);
        pen.Text("sure", MarkWords.Sureness.Of(mark.Sure));
        pen.Text("replaces", mark.Replaces?.Text);
        pen.Text("note", mark.Note);
        if (form is null) pen.Raw("fact", ((UnknownFact)mark.Fact).Raw);
        else pen.Thing("fact", () => form.Write(pen, mark.Fact));
    }
}
