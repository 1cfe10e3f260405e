using System.Runtime.Intrinsics;
using Watersown.Bench;

// dotnet run -c Release --project bench/Coverage
// Needs libgdal (Debian: gdal-bin) for one of the baselines. Results are kept in bench/results/coverage.md with the machine named.
Console.WriteLine($"lanes of 512 bits in hardware: {Vector512.IsHardwareAccelerated}; one thread");
if (!args.Contains("deposit")) foreach (var flight in Flight.All) Counting.Measure(flight);
if (!args.Contains("count")) foreach (var flight in Flight.All) Laying.Measure(flight);
