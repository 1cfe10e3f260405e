using System.Data.Common;

namespace Watersown.Records.Database;

/// <summary>The engine, its disk or the way to it failed; nothing of what was asked was written. Hosts need not know a driver to catch it.</summary>
public sealed class BookFailedException : IOException
{
    internal BookFailedException(DbException cause)
        : base("The book could not be read or written: " + cause.Message.TrimEnd('.') + ".", cause)
    {
    }

    /// <summary>What lies behind a failure, in one line without its full stop: the engine's own words where the book failed.</summary>
    public static string Cause(Exception failure) =>
        (failure is BookFailedException { InnerException: { } engine } ? engine : failure).Message.ReplaceLineEndings(" ").TrimEnd('.');
}
