# Writes expected values of comparisons and of a month against the month before. Needs R 4.2 itself only.
# Run it in this folder: Rscript comparisons.R
a <- c(24.1, 23.6, 25.2, 24.8, 23.9, 24.4, 25.0, 24.6, 23.2, 24.9)
b <- c(25.3, 24.7, 26.4, 23.8, 25.9, 25.1, 27.0, 24.2, 25.6, 26.1, 24.9, 25.4)
out <- list()
put <- function(case, quantity, value) out[[length(out) + 1]] <<- data.frame(case, quantity, value = sprintf("%.15g", value))

w <- t.test(b, a)
put("welch", "difference", unname(w$estimate[1] - w$estimate[2]))
put("welch", "degrees", unname(w$parameter))
put("welch", "p", w$p.value)
put("welch", "low", w$conf.int[1])
put("welch", "high", w$conf.int[2])

s <- a[1:4]
l <- b[1:7]
error <- sqrt(var(s) / 4 + var(l) / 7)
t <- (mean(l) - mean(s)) / error
put("small", "degrees", 3)
put("small", "p", 2 * pt(-abs(t), 3))
put("small", "low", mean(l) - mean(s) - qt(0.975, 3) * error)
put("small", "high", mean(l) - mean(s) + qt(0.975, 3) * error)

put("spread", "low", sd(a) * sqrt(9 / qchisq(0.975, 9)))
put("spread", "high", sd(a) * sqrt(9 / qchisq(0.025, 9)))

for (hits in c(0, 3, 20)) {
  i <- binom.test(hits, 20)$conf.int
  put(paste0("share-", hits), "low", i[1])
  put(paste0("share-", hits), "high", i[2])
}

# The varied doughs of the tests, with rises 6 % longer from the 32nd on: a month later.
i <- 0:49
celsius <- 20 + 0.8 * ((i * 7) %% 11)
hydration <- 60 + (i * 5) %% 13
yeast <- 0.6 + 0.1 * ((i * 3) %% 8)
salt <- 1.6 + 0.1 * ((i * 11) %% 9)
unexplained <- 0.02 * ((i * 13) %% 7 - 3)
rise <- 88 * exp(-0.0953 * (celsius - 24) - 0.01 * (hydration - 65) - 0.8 * log(yeast) + 0.07 * salt + unexplained)
month <- as.numeric(i >= 31)
rise <- rise * ifelse(month == 1, 1.06, 1)
fit <- lm(log(rise) ~ celsius + log(yeast) + hydration + salt + month)
put("adjusted", "percent", 100 * (exp(coef(fit)["month"]) - 1))
put("adjusted", "low", 100 * (exp(confint(fit)["month", 1]) - 1))
put("adjusted", "high", 100 * (exp(confint(fit)["month", 2]) - 1))
put("adjusted", "p", summary(fit)$coefficients["month", 4])
logged <- t.test(log(rise[month == 1]), log(rise[month == 0]))
put("logged", "percent", 100 * (exp(unname(logged$estimate[1] - logged$estimate[2])) - 1))
put("logged", "p", logged$p.value)
water <- t.test(hydration[month == 1], hydration[month == 0])
put("hydration", "low", water$conf.int[1])
put("hydration", "high", water$conf.int[2])
put("hydration", "p", water$p.value)

# The drift of bake loss through a month, in percent.
day <- c(0, 1, 4, 6, 9, 12, 15, 19, 22, 27)
loss <- c(11.2, 11.6, 11.1, 11.9, 11.5, 12.2, 11.8, 12.4, 12.1, 12.6)
line <- lm(loss ~ day)
put("drift", "change", 27 * coef(line)["day"])
put("drift", "low", 27 * confint(line)["day", 1])
put("drift", "high", 27 * confint(line)["day", 2])
put("drift", "p", summary(line)$coefficients["day", 4])

write.csv(do.call(rbind, out), "comparisons-expected.csv", row.names = FALSE, quote = FALSE)
