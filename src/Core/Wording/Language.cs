namespace Watersown.Wording;

/// <summary>The languages of everything that crew see.</summary>
public enum Language
{
    English,
    Spanish,
}
