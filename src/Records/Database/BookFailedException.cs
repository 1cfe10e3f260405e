using System.Data.Common;

namespace Watersown.Records.Database;

/// <summary>The engine, its disk or the way to it failed; nothing of what was asked was written. Hosts need not know a driver to catch it.</summary>
public sealed class BookFailedException : IOException
{
    internal BookFailedException(DbException cause)
        : base("The book could not be read or written: " + cause.Message.TrimEnd('.') + ".", cause)
    {
    }
}
