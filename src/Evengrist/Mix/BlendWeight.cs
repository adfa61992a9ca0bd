namespace Evengrist.Mix;

/// <summary>What a property of several wheats is weighted by when they are mixed.</summary>
public enum BlendWeight
{
    /// <summary>By mass as it lies.</summary>
    Mass,

    /// <summary>By dry matter: the property is carried by the solids.</summary>
    DryMatter,
}
