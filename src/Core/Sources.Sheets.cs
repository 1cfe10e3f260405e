namespace Watersown;

/// <summary>Standards behind the printed sheets, texts and the calendar.</summary>
public static partial class Sources
{
    public static Source Gsm0338 { get; } = new(nameof(Gsm0338), "ETSI / 3GPP TS 23.038 (earlier GSM 03.38), Alphabets and language-specific information", SourceStanding.FromMemory);

    public static Source Rfc5545 { get; } = new(nameof(Rfc5545), "Desruisseaux, B. (ed.), Internet Calendaring and Scheduling Core Object Specification (iCalendar), RFC 5545, 2009", SourceStanding.FromMemory);
}
