using System.Data;
using System.Globalization;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>A moment as a column: UTC text of one width, which both engines sort rightly and a person can read.</summary>
internal sealed class MomentColumn : SqlMapper.TypeHandler<DateTimeOffset>
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'";

    private static readonly Lazy<bool> once = new(Tell);

    public static string Write(DateTimeOffset moment) => moment.ToUniversalTime().ToString(Form, CultureInfo.InvariantCulture);

    public static DateTimeOffset Read(string text) => DateTimeOffset.ParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    public override void SetValue(IDbDataParameter parameter, DateTimeOffset value) => (parameter.DbType, parameter.Value) = (DbType.String, Write(value));

    public override DateTimeOffset Parse(object value) => Read((string)value);

    /// <summary>Before the first query: moments are ours to spell, and <c>farm_version</c> is <c>FarmVersion</c>.</summary>
    public static void Register() => _ = once.Value;

    private static bool Tell()
    {
        SqlMapper.RemoveTypeMap(typeof(DateTimeOffset));
        SqlMapper.RemoveTypeMap(typeof(DateTimeOffset?));
        SqlMapper.AddTypeHandler(new MomentColumn());
        DefaultTypeMap.MatchNamesWithUnderscores = true;
        return true;
    }
}
