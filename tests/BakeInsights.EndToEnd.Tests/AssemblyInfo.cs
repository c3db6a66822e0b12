using Xunit;

// Each of these tests starts programs: two at a time keep a small machine busy, and more would make them wait for each other.
[assembly: CollectionBehavior(MaxParallelThreads = 2)]
