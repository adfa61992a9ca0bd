namespace Evengrist.Intake.Grading;

/// <summary>What a factor's per cent is a per cent of: grain is graded in steps, and each step takes something out.</summary>
public enum SampleBasis
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>The sample as received.</summary>
    AsReceived = 1,

    /// <summary>The sample after dockage is taken out.</summary>
    DockageFree = 2,

    /// <summary>The sample after dockage and after what is shrunken and broken are taken out.</summary>
    DoublyClean = 3,

    /// <summary>As the standard's own method says; the method was not read here.</summary>
    AsMethodSays = 4,

    /// <summary>As the mill itself measures it.</summary>
    AsMillMeasures = 5,
}
