namespace Evengrist.Records.Opening;

/// <summary>Lets one process at a time through the door of a file; the system lets go of it when the process dies.</summary>
internal static class DoorLock
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    /// <exception cref="MillCannotOpen">Another process has been opening the file for too long.</exception>
    public static IDisposable Take(string path)
    {
        var name = path + ".opening";
        for (var waited = TimeSpan.Zero; ; waited += TimeSpan.FromMilliseconds(50))
        {
            try
            {
                return new FileStream(name, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException fault) when (File.Exists(name))
            {
                if (waited > Patience)
                {
                    throw new MillCannotOpen($"{path} is being opened by another program. Wait until that is done, then try again.", fault);
                }

                Thread.Sleep(50);
            }
        }
    }
}
