using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Watersown.Farms;

/// <summary>Everything a record holds, as text, so that two can be compared with their lists; numbers to ten figures.</summary>
internal static class Dump
{
    public static string Of(object value)
    {
        var text = new StringBuilder();
        Write(text, value, string.Empty);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, string path)
    {
        switch (value)
        {
            case null:
                text.Append(path).Append(" none\n");
                return;
            case double number:
                // What is left of figures that cancel is dust, and its sign is chance.
                text.Append(path).Append(' ').Append((Math.Abs(number) < 1e-14 ? 0.0 : number + 0.0).ToString("G10", CultureInfo.InvariantCulture)).Append('\n');
                return;
            case decimal money:
                text.Append(path).Append(' ').Append(money.ToString("0.####", CultureInfo.InvariantCulture)).Append('\n');
                return;
            case string or bool or int or Enum or DateOnly or TimeOnly or TimeSpan or DateTimeOffset:
                text.Append(path).Append(CultureInfo.InvariantCulture, $" {value}\n");
                return;
            case IEnumerable list:
                var index = 0;
                foreach (var entry in list) Write(text, entry, $"{path}[{index++}]");
                return;
        }

        // A quantity is held in one stored unit; its other properties are the same figure again.
        var properties = value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0);
        if (value.GetType().Namespace == "Watersown.Quantities") properties = properties.Take(1);
        foreach (var property in properties) Write(text, property.GetValue(value), path + "." + property.Name);
    }
}
