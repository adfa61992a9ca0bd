namespace Evengrist.Records.Tests.Demo;

/// <summary>Tests that share one demonstration year.</summary>
[CollectionDefinition(Name)]
public sealed class DemonstrationYearCollection : ICollectionFixture<DemonstrationYear>
{
    public const string Name = "demonstration year";
}
