namespace MarineService.Core.Tests.Documentation;

/// <summary>Tests that take the whole process for themselves: its console, or its measure of allocated memory.</summary>
[CollectionDefinition(nameof(OneAtATime), DisableParallelization = true)]
public sealed class OneAtATime;
