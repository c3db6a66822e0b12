# Writes expected values of surfaces, calibration, multiplicity, power and agreement. Needs R 4.2 itself only.
# Run it in this folder: Rscript methods.R
options(digits = 17)
rows <- list()
put <- function(case, quantity, value) rows[[length(rows) + 1]] <<- data.frame(
  case = case, quantity = quantity, value = format(as.numeric(value), digits = 17, trim = TRUE, scientific = TRUE))

# Stationary points: b + 2 B x = 0.
surface <- function(case, fit, factors) {
  b <- coef(fit)[factors]
  B <- outer(factors, factors, Vectorize(function(i, j) {
    names <- if (i == j) sprintf("I(%s^2)", i) else c(sprintf("%s:%s", i, j), sprintf("%s:%s", j, i))
    coef(fit)[intersect(names, names(coef(fit)))] / (if (i == j) 1 else 2)
  }))
  x <- solve(-2 * B, b)
  e <- eigen(B, symmetric = TRUE)
  for (j in seq_along(factors)) {
    put(case, paste("place", factors[j]), x[j])
    put(case, paste("bend", j), e$values[j])
    u <- e$vectors[, j]
    u <- u * sign(u[which.max(abs(u))])
    put(case, paste("direction", j, "first"), u[1])
    w <- setNames(numeric(length(coef(fit))), names(coef(fit)))
    for (i in seq_along(factors)) for (k in seq_along(factors)) if (k >= i) {
      names <- if (i == k) sprintf("I(%s^2)", factors[i]) else sprintf("%s:%s", factors[i], factors[k])
      w[names] <- u[i] * u[k]
    }
    put(case, paste("bend", j, "SE"), sqrt(w %*% vcov(fit) %*% w))
  }
  put(case, "height", sum(b * x) / 2)
}
reaction <- read.csv("../surfaces/reaction.csv")
surface("reaction", lm(yield ~ block + x1 + x2 + I(x1^2) + I(x2^2) + x1:x2, reaction), c("x1", "x2"))
heli <- read.csv("../surfaces/helicopter.csv")
surface("helicopter", lm(time ~ block + (x1 + x2 + x3 + x4)^2 + I(x1^2) + I(x2^2) + I(x3^2) + I(x4^2), heli),
        c("x1", "x2", "x3", "x4"))
pastry <- read.csv("../bread/pastry.csv")
surface("pastry", lm(y ~ factor(day) + (x1 + x2 + x3)^2 + I(x1^2) + I(x2^2) + I(x3^2), pastry), c("x1", "x2", "x3"))

# Calibration, by root finding on the prediction band.
inverse <- function(case, x, y, readings, level, mean.only = FALSE) {
  fit <- lm(y ~ x); n <- length(x); m <- length(readings)
  df <- n - 2 + (if (mean.only) 0 else m - 1)
  s <- sqrt((deviance(fit) + (if (mean.only) 0 else sum((readings - mean(readings))^2))) / df)
  t <- qt((1 + level) / 2, df); b <- coef(fit); y0 <- mean(readings)
  gap <- function(v) (y0 - b[1] - b[2] * v)^2 -
    t^2 * s^2 * ((if (mean.only) 0 else 1 / m) + 1 / n + (v - mean(x))^2 / sum((x - mean(x))^2))
  at <- (y0 - b[1]) / b[2]; far <- 5 * diff(range(x))
  put(case, "estimate", at)
  put(case, "low", uniroot(gap, c(at - far, at), tol = 1e-13)$root)
  put(case, "high", uniroot(gap, c(at, at + far), tol = 1e-13)$root)
  put(case, "deviation", s)
}
thermometer <- read.csv("../calibration/thermometer.csv")
arsenic <- read.csv("../calibration/arsenic.csv")
warm <- function(...) inverse(..., x = thermometer$true_temperature_f, y = thermometer$reading_f)
grams <- function(...) inverse(..., x = arsenic$actual, y = arsenic$measured)
warm("thermometer one", readings = 104, level = 0.95)
warm("thermometer ninety", readings = 100, level = 0.9)
warm("thermometer three", readings = c(103.5, 104.1, 104.4), level = 0.95)
warm("thermometer mean", readings = 104, level = 0.95, mean.only = TRUE)
grams("arsenic one", readings = 3, level = 0.95)
grams("arsenic mean", readings = 3, level = 0.95, mean.only = TRUE)
grams("arsenic four", readings = c(3.17, 3.09, 3.16, 3.05), level = 0.95)

# Multiplicity.
p <- c(0.01, 0.02, 0.03, 0.005, 0.5, 0.02, 0.8, 1e-8)
for (i in seq_along(p)) {
  put("holm", i, p.adjust(p, "holm")[i])
  put("benjamini hochberg", i, p.adjust(p, "BH")[i])
}

# Power.
put("power", "two groups", power.t.test(n = 20, delta = 1, sd = 1)$power)
put("power", "two groups n", power.t.test(power = 0.9, delta = 1, tol = 1e-12)$n)
put("power", "one-sided n", power.t.test(power = 0.9, delta = 1, alternative = "one.sided", tol = 1e-12)$n)
put("power", "unequal spread", power.t.test(n = 12, delta = 6, sd = 8)$power)
put("power", "paired", power.t.test(n = 12, delta = 6, sd = 8, type = "paired")$power)
put("power", "one percent", power.t.test(n = 10, delta = 25, sd = 40, sig.level = 0.01)$power)
put("power", "one sample n", power.t.test(power = 0.8, delta = 5, sd = 12, type = "one.sample", tol = 1e-12)$n)
put("power", "difference", power.t.test(n = 15, power = 0.8, sd = 30, tol = 1e-12)$delta)
put("power", "both sides", power.t.test(n = 5, delta = 0.5, sd = 1, strict = TRUE)$power)
put("power", "groups n", uniroot(function(n) power.anova.test(groups = 4, n = n, between.var = 1, within.var = 3)$power - 0.8,
                                  c(5, 30), tol = 1e-12)$root)
put("power", "groups", power.anova.test(groups = 4, between.var = 1, within.var = 3, n = 5)$power)
# R's pt and pf lose digits in tails, so the grid is integrated.
below <- function(t, df, d) integrate(function(s) pnorm(t * s - d) * dchisq(s^2 * df, df) * 2 * s * df,
                                      0, 6, rel.tol = 1e-12, subdivisions = 2000)$value
for (df in c(3, 10, 58)) for (d in c(-1, 0.3, 2.5, 6)) for (t in c(0.5, 2, 4))
  put("noncentral t", sprintf("%g %g %g", t, df, d), below(t, df, d))
above <- function(f, a, b, l) integrate(function(s) pchisq(f * s * a / b, a, l, lower.tail = FALSE) * dchisq(s, b),
                                        0, 40 * b, rel.tol = 1e-12, subdivisions = 5000)$value
for (b in c(4, 20)) for (l in c(0.5, 6, 30)) for (f in c(1, 3.2, 8))
  put("noncentral F", sprintf("%g 3 %g %g", f, b, l), above(f, 3, b, l))

# Agreement, by the formulas with nothing but R's arithmetic.
kappa <- function(case, counts, weights) {
  n <- sum(counts); s <- counts / n; k <- nrow(counts)
  d <- abs(outer(1:k, 1:k, "-")) / (k - 1)
  w <- switch(weights, none = (d == 0) + 0, linear = 1 - d, quadratic = 1 - d^2)
  r <- rowSums(s); q <- colSums(s); o <- sum(s * w); e <- sum(outer(r, q) * w); v <- (o - e) / (1 - e)
  both <- outer(c(w %*% q), c(t(w) %*% r), "+")
  put(case, paste(weights, "kappa"), v)
  put(case, paste(weights, "SE"), sqrt((sum(s * (w - both * (1 - v))^2) - (v - e * (1 - v))^2) / n) / (1 - e))
  put(case, paste(weights, "chance SE"), sqrt((sum(outer(r, q) * (w - both)^2) - e^2) / n) / (1 - e))
}
thirty <- matrix(c(5, 2, 0, 0, 1, 6, 2, 0, 0, 2, 7, 1, 0, 0, 1, 3), 4, byrow = TRUE)
lopsided <- matrix(c(11, 3, 1, 0, 8, 2, 4, 1, 9), 3, byrow = TRUE)
for (weights in c("none", "linear", "quadratic")) {
  kappa("thirty", thirty, weights)
  kappa("lopsided", lopsided, weights)
}

icc <- function(case, m) {
  n <- nrow(m); k <- ncol(m)
  a <- anova(lm(c(m) ~ factor(row(m)) + factor(col(m))))[["Mean Sq"]]
  R <- a[1]; J <- a[2]; E <- a[3]; W <- anova(lm(c(m) ~ factor(row(m))))[["Mean Sq"]][2]
  both <- function(name, single, low, high) {
    raise <- function(v) k * v / (1 + (k - 1) * v)
    put(case, paste(name, "single"), single); put(case, paste(name, "mean"), raise(single))
    put(case, paste(name, "single low"), low); put(case, paste(name, "single high"), high)
    put(case, paste(name, "mean low"), raise(low)); put(case, paste(name, "mean high"), raise(high))
  }
  share <- function(f) (f - 1) / (f + k - 1)
  both("one way", (R - W) / (R + (k - 1) * W), share(R / W / qf(0.975, n - 1, n * (k - 1))),
       share(R / W * qf(0.975, n * (k - 1), n - 1)))
  both("consistency", (R - E) / (R + (k - 1) * E), share(R / E / qf(0.975, n - 1, (n - 1) * (k - 1))),
       share(R / E * qf(0.975, (n - 1) * (k - 1), n - 1)))
  v <- (R - E) / (R + (k - 1) * E + k * (J - E) / n)
  x <- k * v / (n * (1 - v)); y <- 1 + k * v * (n - 1) / (n * (1 - v))
  df <- (x * J + y * E)^2 / ((x * J)^2 / (k - 1) + (y * E)^2 / ((n - 1) * (k - 1)))
  f1 <- qf(0.975, n - 1, df); f2 <- qf(0.975, df, n - 1)
  both("absolute", v, n * (R - f1 * E) / (f1 * (k * J + (k * n - k - n) * E) + n * R),
       n * (f2 * R - E) / (k * J + (k * n - k - n) * E + n * f2 * R))
  for (q in c("R", "J", "E", "W")) put(case, q, get(q))
  judges <- friedman.test(m); things <- friedman.test(t(m))
  put(case, "judges chi square", judges$statistic); put(case, "judges p", judges$p.value)
  put(case, "things chi square", things$statistic); put(case, "things p", things$p.value)
  put(case, "things W", things$statistic / k / (n - 1))
}
six <- matrix(c(9, 2, 5, 8, 6, 1, 3, 2, 8, 4, 6, 8, 7, 1, 2, 6, 10, 5, 6, 9, 6, 2, 4, 7), 6, byrow = TRUE)
tied <- matrix(c(4, 4, 5, 3, 3, 2, 5, 5, 5, 2, 3, 2, 4, 5, 4, 1, 2, 2, 3, 3, 4), 7, byrow = TRUE)
icc("six", six)
icc("tied", tied)
write.csv(do.call(rbind, rows), "methods-expected.csv", row.names = FALSE, quote = FALSE)
