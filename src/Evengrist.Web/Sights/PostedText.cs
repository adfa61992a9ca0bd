namespace Evengrist.Web.Sights;

/// <summary>A text that was pasted or sent as a file: the file goes before the text and becomes it, so that it can be shown and mended.</summary>
internal static class PostedText
{
    private const int MostBytes = 2 * 1024 * 1024;

    /// <summary>The text, or what is wrong with the file.</summary>
    /// <param name="file">The file; null or empty for none.</param>
    /// <param name="text">What was pasted.</param>
    /// <param name="less">What to send less of, where it is too large: <c>the tests of a season</c>.</param>
    public static (string Text, string? Fault) Of(IFormFile? file, string? text, string less)
    {
        if (file is { Length: > MostBytes })
        {
            return (text ?? "", $"“{file.FileName}” is larger than 2 MiB: send {less} at a time.");
        }

        if (file is { Length: > 0 })
        {
            using var reader = new StreamReader(file.OpenReadStream());
            text = reader.ReadToEnd();
        }

        return text is { Length: > 3 } && text.StartsWith("PK", StringComparison.Ordinal) && text.Contains('\u0003', StringComparison.Ordinal)
            ? ("", "That is a workbook: save its sheet as CSV (UTF-8) and send that, or copy its cells into the text.")
            : (text ?? "", null);
    }
}
