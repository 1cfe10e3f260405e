[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Watersown.Core.Tests")]
[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Watersown.Coverage.Bench")]
