using System.Globalization;

namespace Watersown;

/// <summary>Names the place of a problem as a path and, where there is one, by the name people know it by.</summary>
public static class Place
{
    /// <summary>One entry of a list: <c>fields[3].net_ac (Two Gates)</c>.</summary>
    /// <param name="list">Key of the list.</param>
    /// <param name="index">Position from 0.</param>
    /// <param name="name">The farm's name for the entry; empty where it has none.</param>
    /// <param name="key">Key inside the entry; empty for the entry itself.</param>
    public static string Of(string list, int index, string name, string key = "")
    {
        var path = list + "[" + index.ToString(CultureInfo.InvariantCulture) + "]";
        return Named(key.Length == 0 ? path : path + "." + key, name);
    }

    /// <summary>A path with a name behind it.</summary>
    public static string Named(string path, string name) => name.Length == 0 ? path : path + " (" + name + ")";
}
