# Makes a journal of two formulas and two ways of kneading by lot, and writes what R says of their differences, and of the
# chances of class plans. Needs R 4.2 itself only. Run it in this folder: Rscript compare.R
options(digits = 17)
exact <- function(v) format(v, digits = 17, trim = TRUE, scientific = TRUE)
rows <- list()
put <- function(case, quantity, value) rows[[length(rows) + 1]] <<- data.frame(case = case, quantity = quantity, value = exact(value))

set.seed(20261016)
days <- 12
day <- rep(1:days, each = 2)
formula <- rep(c("lane loaf", "seed loaf"), days)
kneading <- ifelse(day <= 6, "by hand", "machine")
of_day <- rnorm(days, 0, 0.08)[day]
temp <- round(rnorm(2 * days, 24, 1.5), 1)
rise <- round(95 * exp(-0.095 * (temp - 24) + of_day + ifelse(formula == "seed loaf", 0.12, 0) + rnorm(2 * days, 0, 0.04)))
volume <- round(800 * (4 - 0.01 * (temp - 24)^2 + of_day / 2 + rnorm(2 * days, 0, 0.08)))
bakes <- data.frame(
  bake_id = paste0("W", seq_along(day)), baked_on = sprintf("2026-10-%02d", day), formula = formula, kneading = kneading,
  dough_temp_c = temp, rise_min = rise, loaf_g = 800, loaf_volume_ml = volume)
write.csv(bakes, "compare.csv", row.names = FALSE, quote = FALSE)

compare <- function(case, fit, term, log) {
  s <- summary(fit)$coefficients[term, ]
  put(case, "difference", s[["Estimate"]])
  put(case, "p", s[["Pr(>|t|)"]])
  for (level in c(95, 90)) {
    ends <- confint(fit, term, level = level / 100)
    put(case, paste("low", level), ends[1])
    put(case, paste("high", level), ends[2])
  }
}
bakes$day <- factor(bakes$baked_on)
bakes$volume <- bakes$loaf_volume_ml / bakes$loaf_g
compare("rise by formula", lm(log(rise_min) ~ day + dough_temp_c + formula, bakes), "formulaseed loaf")
compare("volume by formula", lm(volume ~ day + dough_temp_c + I((dough_temp_c - 24)^2) + formula, bakes), "formulaseed loaf")
compare("rise by kneading", lm(log(rise_min) ~ dough_temp_c + kneading, bakes), "kneadingmachine")
compare("volume by kneading", lm(volume ~ dough_temp_c + I((dough_temp_c - 24)^2) + kneading, bakes), "kneadingmachine")

# Two one-sided t tests of 5 %: the larger of their p values, with a margin of 10 % of the logarithm's scale.
tost <- function(case, fit, term, low, high) {
  s <- summary(fit)$coefficients[term, ]
  df <- fit$df.residual
  put(case, "larger p of two", max(pt((s[["Estimate"]] - low) / s[["Std. Error"]], df, lower.tail = FALSE),
                                   pt((s[["Estimate"]] - high) / s[["Std. Error"]], df)))
}
for (margin in c(5, 10, 15, 20)) {
  tost(paste("rise by formula within", margin), lm(log(rise_min) ~ day + dough_temp_c + formula, bakes), "formulaseed loaf",
       log(1 - margin / 100), log(1 + margin / 100))
}

# The chance of finding the wished difference: levels the difference apart, others in the middle; bench-rounds as blocks.
chance <- function(bakes, levels, blocks, columns, difference, sd) {
  per <- bakes / levels
  df <- bakes - blocks - columns
  pf(qf(0.95, levels - 1, df), levels - 1, df, ncp = per * difference^2 / (2 * sd^2), lower.tail = FALSE)
}
put("plan", "two by two, 3 benches, 2 rounds", chance(24, 2, 6, 2, 0.3, 0.2))
put("plan", "three by two, 4 benches, 1 round, three", chance(24, 3, 4, 3, 0.3, 0.2))
put("plan", "three by two, 4 benches, 1 round, two", chance(24, 2, 4, 3, 0.3, 0.2))
put("plan", "half of 2^3, 3 benches, 3 rounds", chance(36, 2, 9, 3, 0.15, 0.2))

# The same by simulation for one: full model fitted to made-up classes, 40,000 of them (standard error 0.0025).
found <- replicate(40000, {
  d <- expand.grid(a = 0:1, b = 0:1, block = factor(1:6))
  y <- 0.3 * d$a + rnorm(6)[d$block] + rnorm(24, 0, 0.2)
  r <- .lm.fit(model.matrix(~ block + b + a, d), y)
  q <- r$effects
  q[8]^2 / (sum(q[-(1:8)]^2) / 16) > qf(0.95, 1, 16)
})
put("plan", "two by two, simulated", mean(found))
# A t test without blocks, one bench, one factor: what tables of sample size print.
put("t", "64 of each, half a standard deviation", power.t.test(n = 64, delta = 0.5, sd = 1)$power)
write.csv(do.call(rbind, rows), "compare-expected.csv", row.names = FALSE, quote = FALSE)
