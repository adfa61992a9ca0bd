namespace Evengrist.Plant.Cases;

/// <summary>The text of a posed case as it came.</summary>
internal static class PosedBytes
{
    /// <summary>All of it, without a byte order mark; null where it is larger than a case may be.</summary>
    public static ReadOnlyMemory<byte>? Of(Stream stream, int most)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using var copy = new MemoryStream();
        var buffer = new byte[16 * 1024];
        for (int got; (got = stream.Read(buffer)) > 0;)
        {
            copy.Write(buffer, 0, got);
            if (copy.Length > most)
            {
                return null;
            }
        }

        var bytes = copy.ToArray();
        return bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes.AsMemory(3) : bytes;
    }
}
