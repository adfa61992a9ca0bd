using Evengrist.Plant;

namespace Evengrist.Cli;

/// <summary>Files of this machine.</summary>
internal static class Files
{
    public static Stream Open(string path)
    {
        try
        {
            return File.OpenRead(path);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInput(new Fault(null, null, "the file", Fault.Show(path), refused is FileNotFoundException or DirectoryNotFoundException ? "a file that can be read; there is none of this name" : "a file that can be read; it is a folder, or reading it is not allowed"));
        }
    }

    public static Stream Create(string path)
    {
        try
        {
            return File.Create(path);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInput(new Fault(null, null, "--out", Fault.Show(path), "a file that can be written, in a folder that is there"));
        }
    }
}
