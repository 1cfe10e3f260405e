[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Watersown.Records.Tests")]
