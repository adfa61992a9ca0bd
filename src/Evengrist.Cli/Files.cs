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
            throw new BadInput(new Fault(null, null, "the file", Fault.Show(path), $"a file that can be read. {Fault.Show(refused.GetType().Name)}"));
        }
    }
}
