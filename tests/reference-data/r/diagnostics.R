# Writes the data and expected values of the diagnostics' tests. Needs R (4.2 was used) with the packages MASS, car and
# lmtest. Run it in this folder.
options(digits = 17)
suppressMessages({ library(MASS); library(car); library(lmtest) })

write <- function(frame, file) write.csv(frame, file, row.names = FALSE, quote = FALSE)

long <- function(...) {
  values <- unlist(list(...))
  data.frame(quantity = names(values), value = format(values, digits = 16, trim = TRUE, scientific = TRUE))
}

checks <- function(fit) {
  k <- length(coef(fit)) + 1
  n <- nobs(fit)
  names <- names(coef(fit))[-1]
  bp <- bptest(fit)
  dw <- dwtest(fit, exact = TRUE, alternative = "two.sided")
  sw <- shapiro.test(residuals(fit))
  x <- model.matrix(fit)
  parts <- svd(sweep(x, 2, sqrt(colSums(x^2)), "/"))
  shares <- t(parts$v^2) / parts$d^2
  long(
    setNames(rstandard(fit), paste("studentised", 1:n)),
    setNames(rstudent(fit), paste("deletion studentised", 1:n)),
    setNames(cooks.distance(fit), paste("Cook", 1:n)),
    "adjusted R-squared" = summary(fit)$adj.r.squared,
    "log likelihood" = c(logLik(fit)),
    "AICc" = AIC(fit) + 2 * k * (k + 1) / (n - k - 1),
    "leave-one-out error" = sqrt(mean((residuals(fit) / (1 - hatvalues(fit)))^2)),
    "Bonferroni p" = min(1, n * min(2 * pt(-abs(rstudent(fit)), df.residual(fit) - 1))),
    setNames(vif(fit), paste("variance inflation of", names)),
    setNames(max(parts$d) / parts$d, paste("condition index", seq_along(parts$d))),
    setNames(sweep(shares, 2, colSums(shares), "/")[length(parts$d), ], paste("last share", seq_along(parts$d))),
    "Breusch-Pagan" = bp$statistic[[1]], "Breusch-Pagan p" = bp$p.value[[1]],
    "Durbin-Watson" = dw$statistic[[1]], "Durbin-Watson p" = dw$p.value[[1]],
    "Shapiro-Wilk" = sw$statistic[[1]], "Shapiro-Wilk p" = sw$p.value[[1]])
}

# Loss of ammonia in a plant: Brownlee (1965). The data are in stackloss.csv.
write(checks(lm(stack.loss ~ ., stackloss)), "stackloss-checks.csv")

# Heat of hardening cement: Woods, Steinour and Starke (1932).
write(setNames(cement, c("aluminate", "silicate", "ferrite", "disilicate", "heat")), "cement.csv")
write(checks(lm(y ~ ., cement)), "cement-checks.csv")

# Stopping distance by speed: Ezekiel (1930). The data are in cars.csv. Lack of fit; weights by speed.
line <- lm(dist ~ speed, cars)
groups <- lm(dist ~ factor(speed), cars)
lack <- anova(line, groups)
weighted <- lm(dist ~ speed, cars, weights = 1 / speed)
write(long(
  "lack of fit F" = lack$F[2], "lack of fit p" = lack[["Pr(>F)"]][2],
  setNames(coef(weighted), c("weighted constant", "weighted speed")),
  setNames(sqrt(diag(vcov(weighted))), c("weighted constant SE", "weighted speed SE")),
  "weighted residual SD" = summary(weighted)$sigma,
  "weighted R-squared" = summary(weighted)$r.squared,
  "weighted adjusted R-squared" = summary(weighted)$adj.r.squared,
  "weighted log likelihood" = c(logLik(weighted)),
  setNames(hatvalues(weighted), paste("weighted leverage", 1:50)),
  setNames(rstudent(weighted), paste("weighted deletion studentised", 1:50)),
  setNames(cooks.distance(weighted), paste("weighted Cook", 1:50)),
  "weighted F" = anova(lm(dist ~ 1, cars, weights = 1 / speed), weighted)$F[2]), "cars-checks.csv")

# Shapiro and Wilk's test at small sizes, and a long series for Durbin and Watson's: numbers without a source.
set.seed(1)
series <- data.frame(x = rnorm(240), y = as.numeric(filter(rnorm(240), 0.1, "recursive")))
write(format(series, digits = 15), "series.csv")
series <- read.csv("series.csv")
first <- sapply(4:30, function(n) c(shapiro.test(residuals(lm(y ~ 1, series[1:n, ])))[1:2]))
write(long(
  setNames(unlist(first[1, ]), paste("Shapiro-Wilk", 4:30)),
  setNames(unlist(first[2, ]), paste("Shapiro-Wilk p", 4:30)),
  "Durbin-Watson exact p of 60" =
    dwtest(lm(y ~ x, series[1:60, ]), exact = TRUE, alternative = "two.sided")$p.value,
  "Durbin-Watson normal p of 200" =
    dwtest(lm(y ~ x, series[1:200, ]), exact = FALSE, alternative = "two.sided")$p.value,
  "Durbin-Watson normal p of 240" =
    dwtest(lm(y ~ x, series), exact = FALSE, alternative = "two.sided")$p.value), "series-checks.csv")
