using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;

namespace Watersown.Records.Files.Handout;

/// <summary>Holds an XML of ISO 11783-10 against the rules of its schemas (tests/Reference/iso11783-10). Knows nothing of how it was written.</summary>
internal sealed partial class TaskDataRules
{
    private const int LongestText = 32;

    private static readonly JsonElement Rules = JsonDocument.Parse(File.ReadAllText(ReferenceFile.PathOf("iso11783-10", "rules.json"))).RootElement;

    private readonly List<string> breaches = [];
    private readonly HashSet<string> ids = new(StringComparer.Ordinal);
    private readonly List<(string Where, string Id)> references = [];
    private readonly string prefix;

    private TaskDataRules(string prefix) => this.prefix = prefix;

    /// <summary>Every rule that a task file breaks.</summary>
    public static IReadOnlyList<string> Breaches(XElement root) => Look(root, "ISO11783_TaskData", string.Empty, dangling: true);

    /// <summary>Every rule that the XML of a time log breaks; what it refers to stands in the task file.</summary>
    public static IReadOnlyList<string> LogBreaches(XElement root) => Look(root, "TIM", "log-", dangling: false);

    private static List<string> Look(XElement root, string name, string prefix, bool dangling)
    {
        var rules = new TaskDataRules(prefix);
        if (root.Name.LocalName != name) rules.breaches.Add($"the root is {root.Name}, not {name}");
        rules.Element(root);
        if (dangling) rules.breaches.AddRange(rules.references.Where(r => !rules.ids.Contains(r.Id)).Select(r => $"{r.Where} refers to {r.Id}, which is not there"));
        return rules.breaches;
    }

    private void Element(XElement element)
    {
        var tag = element.Name.LocalName;
        if (!Rules.TryGetProperty(prefix + tag, out var rule))
        {
            breaches.Add($"no rule for {tag}");
            return;
        }

        var attributes = rule.GetProperty("attributes");
        foreach (var given in element.Attributes())
        {
            if (attributes.TryGetProperty(given.Name.LocalName, out var attribute)) Value($"{tag}/{given.Name.LocalName}", given.Value, attribute);
            else breaches.Add($"{tag} has no attribute {given.Name}");
        }

        foreach (var attribute in attributes.EnumerateObject().Where(a => a.Value.GetProperty("required").GetBoolean() && element.Attribute(a.Name) is null))
            breaches.Add($"{tag} lacks {attribute.Name}");
        var inside = rule.GetProperty("children").EnumerateArray().Select(c => c.GetString()).ToHashSet(StringComparer.Ordinal);
        foreach (var child in element.Elements())
        {
            if (!inside.Contains(child.Name.LocalName)) breaches.Add($"{child.Name.LocalName} may not stand in {tag}");
            Element(child);
        }
    }

    private void Value(string where, string value, JsonElement rule)
    {
        if (value.Length == 0 && prefix.Length > 0) return; // said by the rows themselves
        var type = rule.GetProperty("type").GetString()!;
        if (rule.TryGetProperty("values", out var values) && values.EnumerateArray().All(v => v.GetString() != value)) breaches.Add($"{where} '{value}' is none of its words");
        switch (type)
        {
            case "xs:ID":
                // A time log is named by its file; everything else by its element.
                if (!IdPattern().IsMatch(value) || !(value.StartsWith(where[..3], StringComparison.Ordinal) || value.StartsWith("TLG", StringComparison.Ordinal))) breaches.Add($"{where} '{value}' is no id");
                if (!ids.Add(value)) breaches.Add($"{where} '{value}' is there twice");
                break;
            case "xs:IDREF":
                references.Add((where, value));
                break;
            case "xs:string":
                if (value.Length > LongestText) breaches.Add($"{where} '{value}' is longer than {LongestText}");
                break;
            case "xs:hexBinary":
                if (value.Length % 2 != 0 || !value.All(char.IsAsciiHexDigitUpper)) breaches.Add($"{where} '{value}' is not hexadecimal");
                break;
            case "xs:dateTime":
                if (!DateTimeOffset.TryParse(value, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out _)) breaches.Add($"{where} '{value}' is no moment");
                break;
            case "xs:decimal" or "xs:long" or "xs:unsignedLong" or "xs:unsignedShort" or "xs:unsignedByte":
                Number(where, value, type, rule);
                break;
            case "xs:NMTOKEN" or "xs:language":
                _ = XmlConvert.VerifyNMTOKEN(value);
                break;
            default:
                breaches.Add($"{where} has a type {type} that nobody checks");
                break;
        }
    }

    private void Number(string where, string value, string type, JsonElement rule)
    {
        if (!decimal.TryParse(value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            breaches.Add($"{where} '{value}' is no number");
            return;
        }

        if (type != "xs:decimal" && number != Math.Truncate(number)) breaches.Add($"{where} '{value}' is not whole");
        if (rule.TryGetProperty("minValue", out var least) && number < least.GetDecimal()) breaches.Add($"{where} '{value}' is under {least}");
        if (rule.TryGetProperty("maxValue", out var most) && number > most.GetDecimal()) breaches.Add($"{where} '{value}' is over {most}");
        var digits = value.Contains('.', StringComparison.Ordinal) ? value.Length - value.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        if (rule.TryGetProperty("fractionDigits", out var places) && digits > places.GetInt32()) breaches.Add($"{where} '{value}' has too many digits");
    }

    [GeneratedRegex("^[A-Z]{3}-?[0-9]+$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex IdPattern();
}
