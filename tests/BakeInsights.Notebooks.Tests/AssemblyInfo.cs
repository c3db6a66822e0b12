using Xunit;

// A run sets the process's current directory and formatters.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
