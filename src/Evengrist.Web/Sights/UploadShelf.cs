using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>Files that passed their dry run and wait for a person to confirm.</summary>
public sealed class UploadShelf(IClock clock) : PutBy<Batch>(clock);
