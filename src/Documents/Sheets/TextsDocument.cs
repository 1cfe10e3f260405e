using Watersown.Documents.Json;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Documents.Sheets;

/// <summary>
/// The texts of a day for another program to send. Telephone numbers are left out: the file may be passed on.
/// </summary>
public static class TextsDocument
{
    /// <summary>Version of the document.</summary>
    public const int Version = 1;

    public static ReadOnlyMemory<byte> Write(SeasonPlan plan, SheetSet set)
    {
        using var pen = new JsonPen();
        pen.Thing(null, () =>
        {
            pen.Number("watersown_texts", Version);
            pen.Text("farm", plan.State.Farm.Name);
            pen.Number("plan", plan.Number);
            pen.Day("day", set.Day);
            pen.List("texts", set.Texts, text => pen.Thing(null, () =>
            {
                pen.Text("to", text.Name);
                pen.Text("role", Role(text.Role));
                pen.Text("language", Words.In(text.Language).Common.Tag);
                pen.Text("text", text.Text);
                pen.Number("length", text.Septets);
            }));
        });
        return pen.Finish();
    }

    /// <summary>The name of a role on the wire.</summary>
    public static string Role(CrewRole role) => role switch
    {
        CrewRole.Grower => "grower",
        CrewRole.Warehouse => "warehouse",
        CrewRole.Dispatcher => "dispatcher",
        CrewRole.Pilot => "pilot",
        CrewRole.Loader => "loader",
        CrewRole.Irrigator => "irrigator",
        CrewRole.District => "district",
        CrewRole.Landlord => "landlord",
        CrewRole.Other => "other",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
