# Writes what the tests of nonlinear least squares compare with. Needs only R itself (4.2 was used).
# Run it in this folder: Rscript growth.R
options(digits = 17)

write <- function(frame, file) write.csv(frame, file, row.names = FALSE, quote = FALSE)

# With derivatives by symbols, as those from differences stop nls after six digits.
fit <- function(formula, data, start) {
  variables <- setdiff(all.vars(formula[[3]]), names(start))
  f <- deriv(formula[[3]], names(start), c(names(start), variables))
  call <- as.call(lapply(c("f", names(start), variables), as.name))
  tight <- nls.control(tol = 1e-12, maxiter = 5000, minFactor = 1e-14, warnOnly = TRUE)
  environment(formula) <- environment()
  suppressWarnings(nls(as.formula(call("~", formula[[2]], call)), data, start = start, control = tight))
}

answers <- function(case, model) {
  s <- summary(model)
  p <- rownames(s$coefficients)
  data.frame(case = case, quantity = c(p, paste(p, "SE"), "residual SD"),
             value = format(c(s$coefficients[, 1], s$coefficients[, 2], s$sigma), digits = 15, trim = TRUE,
                            scientific = TRUE))
}

# Substance converted by a treated enzyme and weights of a chick: Bates and Watts (1988); Crowder and Hand (1990).
treated <- subset(Puromycin, state == "treated")
write(data.frame(concentration = treated$conc, rate = treated$rate), "puromycin.csv")
chick <- subset(ChickWeight, Chick == 1)
write(data.frame(days = chick$Time, weight = chick$weight), "chick.csv")
enzyme <- fit(rate ~ V * conc / (K + conc), treated, list(V = 200, K = 0.05))
weight <- fit(weight ~ A / (1 + exp((m - Time) / s)), as.data.frame(chick), list(A = 500, m = 30, s = 10))

# The values of a parameter with which the least sum of squares is that of the solution plus t t residual mean squares.
ends <- function(name, other) {
  t <- qt(0.975, df.residual(enzyme))
  excess <- function(value) {
    held <- if (name == "V") function(o) sum((treated$rate - value * treated$conc / (o + treated$conc))^2)
            else function(o) sum((treated$rate - o * treated$conc / (value + treated$conc))^2)
    at <- optimize(held, other, tol = 1e-12)$objective
    at - deviance(enzyme) - t^2 * summary(enzyme)$sigma^2
  }
  b <- coef(enzyme)[name]
  e <- summary(enzyme)$coefficients[name, 2]
  c(uniroot(excess, b - c(6, 0) * e, tol = 1e-12)$root, uniroot(excess, b + c(0, 6) * e, tol = 1e-12)$root)
}
limits <- c(ends("V", c(0.001, 0.3)), ends("K", c(100, 400)))
profile <- data.frame(case = "puromycin", quantity = c("V low", "V high", "K low", "K high"),
                      value = format(limits, digits = 12, trim = TRUE, scientific = TRUE))

gause <- read.csv("../growth/gause.csv")
curves <- do.call(rbind, lapply(split(gause, list(gause$series, gause$temperature_c), drop = TRUE), function(d) {
  case <- paste("gause", d$series[1], d$temperature_c[1])
  top <- max(d$yeast)
  middle <- d$hours[which.min(abs(d$yeast - top / 2))]
  s <- max(d$hours) / 6
  logistic <- fit(yeast ~ K / (1 + exp((m - hours) / s)), d, list(K = top, m = middle, s = s / 2))
  c <- coef(logistic)
  gompertz <- fit(yeast ~ A * exp(-exp(mu * exp(1) / A * (lambda - hours) + 1)), d,
                  list(A = c[["K"]], mu = c[["K"]] / (4 * c[["s"]]), lambda = max(c[["m"]] - 2 * c[["s"]], 1)))
  rbind(answers(paste(case, "logistic"), logistic), answers(paste(case, "gompertz"), gompertz))
}))

ecoli <- read.csv("../growth/ecoli.csv")
ecoli$rate <- ecoli$root_rate^2
root <- fit(root_rate ~ b * (temperature_c - low) * (1 - exp(c * (temperature_c - high))), ecoli,
            list(b = 0.033, low = 3, c = 0.3, high = 48))
cardinal <- fit(rate ~ most * (temperature_c - high) * (temperature_c - low)^2 /
                  ((best - low) * ((best - low) * (temperature_c - best) -
                                   (best - high) * (best + low - 2 * temperature_c))), ecoli,
                list(most = 1.75, low = 4, best = 41, high = 48))

write(rbind(answers("puromycin", enzyme), profile, answers("chick", weight), curves, answers("ecoli root", root),
            answers("ecoli cardinal", cardinal)), "growth-expected.csv")
