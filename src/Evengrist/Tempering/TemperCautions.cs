namespace Evengrist.Tempering;

/// <summary>What must be known before a person acts on what tempering says.</summary>
public static class TemperCautions
{
    /// <summary>What the program does not do.</summary>
    public const string Advice = "Advice only: the program opens no valve and starts no dampener or feeder. A named person sets the water and looks at the wheat.";

    /// <summary>Entering a temper bin.</summary>
    public const string Entry = "Nobody enters a temper bin or stands on its wheat: flowing grain traps in seconds, damp wheat hangs and falls. A bridge is not broken from inside. Entry only under the site's permit, with the flow locked off and the air tested.";

    /// <summary>Wet wheat that stands.</summary>
    public const string Wet = "Tempered wheat does not keep: it heats, sours and moulds when the mill stands still. Follow the site's rule on how long it may stand, and clean dampener and bin feet of wet dust by the site's procedure.";

    /// <summary>Dust.</summary>
    public const string Dust = "Dust of grain explodes: the site's dust rules hold at every opening, as much where wheat is wetted.";

    /// <summary>Water.</summary>
    public const string Water = "Water that goes into food is drinking water; the site's food-safety plan says how that is shown.";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Advice, Entry, Wet, Dust, Water];
}
