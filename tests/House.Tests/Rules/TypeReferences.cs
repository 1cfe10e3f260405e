using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Watersown.HouseRules;

/// <summary>Which namespaces of the base library an assembly refers to, read from its metadata: a second opinion beside the banned-symbols file.</summary>
internal static class TypeReferences
{
    // System.Environment is missing here: the compiler itself asks it for the thread in every iterator. The banned-symbols file has it.
    public static ImmutableArray<string> Impure { get; } =
    [
        "System.IO", "System.Net", "System.Data", "System.Threading.Tasks", "System.Text.Json", "System.Diagnostics.Process", "System.Security.Cryptography",
        "System.Console", "System.Random", "System.TimeProvider", "System.DateTime", "System.Threading.Thread", "Microsoft.Extensions",
    ];

    public static IEnumerable<string> Breaches(Assembly assembly, ImmutableArray<string> forbidden)
    {
        using var stream = File.OpenRead(assembly.Location);
        using var reader = new PEReader(stream);
        var metadata = reader.GetMetadataReader();
        return
        [
            .. metadata.TypeReferences
                .Select(metadata.GetTypeReference)
                .Select(t => metadata.GetString(t.Namespace) + "." + metadata.GetString(t.Name))
                .Where(name => forbidden.Any(f => name == f || name.StartsWith(f + ".", StringComparison.Ordinal)))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Select(name => assembly.GetName().Name + " refers to " + name),
        ];
    }
}
