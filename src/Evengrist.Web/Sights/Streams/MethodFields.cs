using Evengrist.Streams;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Streams;

/// <summary>How unsure readings are, as a person typed it.</summary>
public static class MethodFields
{
    /// <summary>Reads the fields.</summary>
    /// <param name="fields">The form.</param>
    /// <param name="start">What stands there before anything was typed.</param>
    public static StreamMethods Read(TypedFields fields, StreamMethods start)
    {
        ArgumentNullException.ThrowIfNull(fields);
        ArgumentNullException.ThrowIfNull(start);
        return new StreamMethods
        {
            Ash = fields.Needed("u-ash", "± of ash", start.Ash), Protein = fields.Needed("u-protein", "± of protein", start.Protein), FallingNumberShare = fields.Needed("u-fn", "± of falling number", 100 * start.FallingNumberShare) / 100,
            StarchDamage = fields.Needed("u-damage", "± of starch damage", start.StarchDamage), YieldShare = fields.Needed("u-yield", "± of yield", 100 * start.YieldShare) / 100,
        };
    }
}
