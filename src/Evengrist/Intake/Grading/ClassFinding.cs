namespace Evengrist.Intake.Grading;

/// <summary>Which class and subclass a sample is.</summary>
/// <param name="Wheat">The class whose limits hold; of mixed wheat the one that predominates.</param>
/// <param name="Subclass">Name of the subclass; empty for none or where it cannot be told.</param>
/// <param name="IsMixed">Whether it is mixed wheat.</param>
/// <param name="How">How it was determined, each a sentence.</param>
/// <param name="Missing">What the subclass needs and lacks, in words; empty where nothing is missing.</param>
public sealed record ClassFinding(WheatClass Wheat, string Subclass, bool IsMixed, IReadOnlyList<string> How, IReadOnlyList<string> Missing)
{
    /// <summary>The name that stands in a designation: Mixed, else the subclass, else the class.</summary>
    public string Name => IsMixed ? ClassModel.Mixed : Subclass.Length > 0 ? Subclass : Wheat.Name;
}
