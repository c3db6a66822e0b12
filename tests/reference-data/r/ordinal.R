# Writes what the tests of ordinal regression compare with. Needs R (4.2 was used), MASS and ordinal.
# Run it in this folder: Rscript ordinal.R
suppressMessages({library(MASS); library(ordinal)})
options(digits = 17)

write <- function(frame, file) write.csv(frame, file, row.names = FALSE, quote = FALSE)

answers <- function(case, estimate, error, loglik) {
  names <- names(estimate)
  data.frame(case = case, quantity = c(names, paste(names, "SE"), "log-likelihood"),
             value = format(c(estimate, error, loglik), digits = 15, trim = TRUE, scientific = TRUE))
}

# Scores of loaves by eight judges: made up here.
set.seed(20240601)
tasting <- expand.grid(judge = paste0("j", 1:8), loaf = 1:9)
tasting$hydration <- c(60, 62, 64, 66, 68, 70, 72, 74, 76)[tasting$loaf]
tasting$salt <- round(1.8 + 0.1 * (tasting$loaf %% 4), 1)
shift <- rnorm(8, 0, 1.1)
scale <- 0.35 * (tasting$hydration - 68) - 0.06 * (tasting$hydration - 68)^2 + 1.5 * (tasting$salt - 1.95) +
  shift[as.integer(tasting$judge)] + rlogis(nrow(tasting))
tasting$score <- 1 + (scale > -4) + (scale > -2) + (scale > 0) + (scale > 1.5)
write(tasting[c("judge", "hydration", "salt", "score")], "tasting.csv")
tasting$z <- (tasting$hydration - 68) / 4
tasting$z2 <- tasting$z^2
tasting$y <- factor(tasting$score, ordered = TRUE)

# Its default tolerance leaves five digits, so the fit is repeated from where it ended.
exact <- function(formula, data) {
  fit <- polr(formula, data, Hess = TRUE)
  for (k in 1:5) fit <- polr(formula, data, Hess = TRUE, start = c(coef(fit), fit$zeta),
                             control = list(reltol = 1e-16, maxit = 1000))
  fit
}

plain <- function(case, formula, data) {
  fit <- exact(formula, data)
  answers(case, c(coef(fit), fit$zeta), sqrt(diag(vcov(fit))), as.numeric(logLik(fit)))
}

# The log-likelihood with a normal shift a judge, each judge's integral by R's integrate, and its maximum by Newton's
# method with differences: another way than clmm's, which stops at a gradient of 1e-6.
marginal <- function(p, x, y, judge, levels) {
  zeta <- c(-Inf, p[seq_len(levels - 1)], Inf)
  eta <- as.vector(x %*% p[levels - 1 + seq_len(ncol(x))])
  sigma <- p[length(p)]
  sum(sapply(split(seq_along(y), judge), function(i) {
    joint <- function(u) sapply(u, function(v)
      sum(log(plogis(zeta[y[i] + 1] - eta[i] - sigma * v) - plogis(zeta[y[i]] - eta[i] - sigma * v))) +
        dnorm(v, log = TRUE))
    top <- optimize(joint, c(-6, 6), maximum = TRUE, tol = 1e-10)
    f <- function(u) exp(joint(u) - top$objective)
    top$objective + log(integrate(f, top$maximum - 9, top$maximum, rel.tol = 1e-13, subdivisions = 2000)$value +
                        integrate(f, top$maximum, top$maximum + 9, rel.tol = 1e-13, subdivisions = 2000)$value)
  }))
}

derivatives <- function(f, p) {
  h <- 2e-3
  n <- length(p)
  e <- diag(n) * h
  g <- sapply(1:n, function(i) (8 * (f(p + e[, i]) - f(p - e[, i])) - f(p + 2 * e[, i]) + f(p - 2 * e[, i])) / (12 * h))
  second <- function(i, j, s) (f(p + s * (e[, i] + e[, j])) - f(p + s * (e[, i] - e[, j])) -
                               f(p - s * (e[, i] - e[, j])) + f(p - s * (e[, i] + e[, j]))) / (4 * (s * h)^2)
  hess <- matrix(0, n, n)
  for (i in 1:n) for (j in 1:i) hess[i, j] <- hess[j, i] <- (4 * second(i, j, 1) - second(i, j, 2)) / 3
  list(g = g, h = hess)
}

rated <- clmm(y ~ z + z2 + salt + (1 | judge), tasting, nAGQ = 25)
f <- function(p) marginal(p, as.matrix(tasting[c("z", "z2", "salt")]), as.integer(tasting$y), tasting$judge, 5)
p <- c(rated$Theta, rated$beta, as.numeric(rated$ST[[1]]))
for (k in 1:3) { d <- derivatives(f, p); p <- p - solve(d$h, d$g) }
d <- derivatives(f, p)
names(p) <- c(colnames(rated$Theta), "z", "z2", "salt", "rater spread")
error <- sqrt(diag(solve(-d$h)))
cat("clmm less ours:", max(abs(c(rated$Theta, rated$beta, rated$ST[[1]]) - p)), "log-likelihood",
    as.numeric(logLik(rated)) - f(p), "SE", max(abs(sqrt(diag(vcov(rated)))[1:7] / error[1:7] - 1)), "\n")

# Scores by hydration: made up, printed in tests/reference-data/ordinal/hydration-scores.csv.
hydration <- read.csv("../ordinal/hydration-scores.csv")
hydration$z <- (hydration$hydration - 68) / 4
hydration$z2 <- hydration$z^2
hydration$y <- factor(hydration$score, ordered = TRUE)

write(rbind(plain("line", y ~ z, hydration), plain("parabola", y ~ z + z2, hydration),
            plain("tasting", y ~ z + z2 + salt, tasting), answers("tasting rated", p, error, f(p))),
      "ordinal-expected.csv")
