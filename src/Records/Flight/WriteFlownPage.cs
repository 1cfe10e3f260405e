using Watersown.Records.Files;
using Watersown.Records.Files.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Flight;

/// <summary>Writes what was flown as one page of PDF.</summary>
public static class WriteFlownPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="page">What stands on it.</param>
    /// <param name="path">Where; nothing may be there yet unless it may go.</param>
    /// <param name="made">When it was put together.</param>
    /// <param name="replace">What is there may go.</param>
    public static Outcome<string> Run(SheetPage page, string path, DateTimeOffset made, bool replace) => SafeWriting.Write(path, PdfSheet.Write(Fitter.Fit(page), made), replace);
}
