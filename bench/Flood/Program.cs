using System.Runtime.Intrinsics;
using Watersown.Bench;

// dotnet run -c Release --project bench/Flood -- [fields] [may] [growth]
// Each part measures its own baselines in the same run. Results are kept in bench/results/flood.md with the machine named.
var farm = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "../../../../examples/marrowfen/farm.json"));
var parts = args.Length == 0 ? ["fields", "may", "growth"] : args;
Console.WriteLine($"lanes of 512 bits in hardware: {Vector512.IsHardwareAccelerated}, of 256: {Vector256.IsHardwareAccelerated}");
if (parts.Contains("fields")) Fields.Measure();
if (parts.Contains("may")) May.Measure(farm);
if (parts.Contains("growth")) Growth.Measure();
