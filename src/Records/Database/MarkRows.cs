using System.Data.Common;
using System.Globalization;
using System.Text;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>Puts many marks into the book with few questions: a server that is asked row by row answers row by row.</summary>
internal static class MarkRows
{
    private const string Columns = "seq, id, happened, entered, received, told_by, device, kind, replaces, sender, sha256, body";

    private static readonly ImmutableArray<string> names = [.. Columns.Split(", ")];

    /// <summary>Rows of one question. Few sizes, so that each is understood by the engine once.</summary>
    private static readonly ImmutableArray<int> sizes = [64, 16, 4, 1];

    private static readonly ImmutableDictionary<int, string> questions = sizes.ToImmutableDictionary(s => s, Question);

    /// <summary>The columns of a mark, in their order.</summary>
    public static object?[] Row(IncomingMark incoming, long seq, string sha256)
    {
        var mark = incoming.Mark;
        return
        [
            seq, mark.Id, MomentColumn.Write(mark.Happened), MomentColumn.Write(mark.Entered), MomentColumn.Write(incoming.Received), mark.By, mark.Device, mark.Kind, mark.Replaces, incoming.Sender, sha256,
            mark.Body,
        ];
    }

    public static async Task InsertAsync(DbConnection connection, IReadOnlyList<object?[]> rows)
    {
        for (var from = 0; from < rows.Count;)
        {
            var size = sizes.First(s => s <= rows.Count - from);
            var given = new DynamicParameters();
            for (var row = 0; row < size; row++)
            {
                for (var column = 0; column < names.Length; column++) given.Add(Name(row, column), rows[from + row][column], rows[from + row][column] is long ? System.Data.DbType.Int64 : System.Data.DbType.String);
            }

            await connection.ExecuteAsync(questions[size], given);
            from += size;
        }
    }

    private static string Question(int size)
    {
        var text = new StringBuilder("INSERT INTO marks (").Append(Columns).Append(") VALUES ");
        for (var row = 0; row < size; row++)
        {
            text.Append(row == 0 ? "(" : ", (").AppendJoin(", ", Enumerable.Range(0, names.Length).Select(column => "@" + Name(row, column))).Append(')');
        }

        return text.ToString();
    }

    private static string Name(int row, int column) => names[column] + row.ToString(CultureInfo.InvariantCulture);
}
