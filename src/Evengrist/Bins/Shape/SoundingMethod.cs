namespace Evengrist.Bins.Shape;

/// <summary>How a sounding was taken, as the method of its reading says it.</summary>
public static class SoundingMethod
{
    /// <summary><c>tape at the wall, heaped</c>.</summary>
    public static string Words(SoundedFrom from, Surface surface) => $"tape {(from == SoundedFrom.Wall ? "at the wall" : "in the middle")}, {surface.Words()}";

    /// <summary><c>heaped</c>, <c>drawn down</c>, <c>level</c>.</summary>
    public static string Words(this Surface surface) => surface switch { Surface.Heaped => "heaped", Surface.DrawnDown => "drawn down", _ => "level" };

    /// <summary>Reads the words of a method; null where they are none of these.</summary>
    public static (SoundedFrom From, Surface Surface)? Read(string method)
    {
        foreach (var from in Enum.GetValues<SoundedFrom>())
        {
            foreach (var surface in Enum.GetValues<Surface>())
            {
                if (Words(from, surface) == method)
                {
                    return (from, surface);
                }
            }
        }

        return null;
    }
}
