using Xunit;

// Each of these tests starts programs that want the machine to themselves.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
