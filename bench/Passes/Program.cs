using System.Runtime.Intrinsics;
using Watersown.Bench;

// dotnet run -c Release --project bench/Passes -- [sweep] [layout] [loads] [orders]
// Each part measures its own baselines in the same run. Results are kept in bench/results/passes.md with the machine named.
var parts = args.Length == 0 ? ["sweep", "layout", "loads", "orders"] : args;
Console.WriteLine($"lanes of 512 bits in hardware: {Vector512.IsHardwareAccelerated}, of 256: {Vector256.IsHardwareAccelerated}");
if (parts.Contains("sweep")) Sweeps.Measure();
if (parts.Contains("layout")) Layouts.Measure();
if (parts.Contains("loads")) Splits.Measure();
if (parts.Contains("orders")) Orders.Measure();
