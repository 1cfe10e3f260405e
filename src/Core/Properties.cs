[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Watersown.Core.Tests")]
