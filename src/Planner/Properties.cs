[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Watersown.Planner.Tests")]
[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Watersown.Planner.Bench")]
