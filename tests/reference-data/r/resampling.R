# Writes the resampling tests' expected values. Needs R 4.2 with its recommended package boot.
# Run it in this folder: Rscript resampling.R
library(boot)
options(digits = 17)

# Efron and Tibshirani (1993), An Introduction to the Bootstrap, table 14.1: a test of spatial perception, column A.
a <- c(48, 36, 20, 29, 42, 42, 20, 42, 22, 41, 45, 14, 6, 0, 33, 28, 34, 4, 32, 24, 47, 41, 24, 26, 30, 41)
write.csv(data.frame(score = a), "spatial.csv", row.names = FALSE, quote = FALSE)
spread <- function(x, i) mean((x[i] - mean(x[i]))^2)
slope <- function(d, i) .lm.fit(cbind(1, d$speed[i]), d$dist[i])$coefficients[2]

ends <- function(case, data, statistic, seed) {
  set.seed(seed)
  drawn <- boot(data, statistic, 200000)
  jack <- empinf(data = data, statistic = statistic, stype = "i", type = "jack")
  ci <- boot.ci(drawn, conf = 0.9, type = c("perc", "bca"), L = jack)
  value <- c(drawn$t0, sd(drawn$t), ci$percent[4:5], ci$bca[4:5])
  data.frame(case = case, quantity = c("estimate", "standard error", "percentile low", "percentile high",
                                       "corrected low", "corrected high"), value = format(value, digits = 8))
}
out <- rbind(ends("spatial", a, spread, 1), ends("cars", cars, slope, 2))

# A difference in means over all ways of dividing ten rises (mm) in two fives.
cold <- c(31, 35, 28, 40, 33)
warm <- c(41, 38, 36, 45, 39)
both <- c(cold, warm)
gap <- combn(10, 5, function(i) abs(mean(both[i]) - mean(both[-i])))
out <- rbind(out, data.frame(case = "means", quantity = "p",
                             value = format(mean(gap >= abs(mean(cold) - mean(warm)) - 1e-9), digits = 16)))
write.csv(out, "resampling-expected.csv", row.names = FALSE, quote = FALSE)
