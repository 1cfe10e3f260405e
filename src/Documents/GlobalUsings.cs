global using System.Collections.Immutable;
global using Watersown.Quantities;
