# Writes what the tests of regression with prior knowledge compare with. Needs only R itself (4.2 was used).
# Run it in this folder: Rscript prior.R
# The posterior is integrated directly over the spread and, for the conflict, over the spread that the data allow; the
# likelihood is that of the rows, not of the estimates, so little of the algebra is shared with what is tested.
options(digits = 17)

data <- head(cars, 12)
x <- cbind(constant = 1, speed = data$speed - 10)
y <- data$dist
write.csv(data.frame(speed = data$speed, distance = data$dist), "prior.csv", row.names = FALSE, quote = FALSE)
n <- nrow(x)
mean0 <- c(0, 3.5)

cases <- list("slope" = c(Inf, 0.6), "both" = c(4, 0.6), "conflict" = c(Inf, 0.05))

out <- do.call(rbind, lapply(names(cases), function(case) {
  sd0 <- cases[[case]]
  known <- is.finite(sd0)
  m <- ifelse(known, if (case == "both") c(10, 3.5) else mean0, 0)
  p0 <- diag(ifelse(known, 1 / sd0^2, 0))

  # Given the spread the coefficients are normal with precision X'X / s^2 + P; what is left over is the spread's own.
  given <- function(s) {
    a <- crossprod(x) / s^2 + p0
    b <- crossprod(x, y) / s^2 + p0 %*% m
    mu <- solve(a, b)
    rest <- sum(y^2) / s^2 + sum((m * (p0 %*% m))) - sum(mu * b)
    list(mu = mu, cov = solve(a), log = -(n + 1) * log(s) - 0.5 * rest - 0.5 * log(det(a)))
  }
  over <- function(f, density) {
    u <- seq(log(1), log(2000), length.out = 6001)
    l <- sapply(u, function(v) density(exp(v)) + v)
    w <- exp(l - max(l)) / sum(exp(l - max(l)))
    sum(w * sapply(u, function(v) f(exp(v))))
  }
  own <- function(s) given(s)$log
  stats <- sapply(1:2, function(j) {
    mean <- over(function(s) given(s)$mu[j], own)
    square <- over(function(s) given(s)$cov[j, j] + (given(s)$mu[j] - mean)^2, own)
    cdf <- function(q) over(function(s) pnorm(q, given(s)$mu[j], sqrt(given(s)$cov[j, j])), own)
    sd <- sqrt(square)
    low <- uniroot(function(q) cdf(q) - 0.025, mean + c(-8, 0) * sd, tol = 1e-11)$root
    high <- uniroot(function(q) cdf(q) - 0.975, mean + c(0, 8) * sd, tol = 1e-11)$root
    c(mean, sd, low, high)
  })
  spread <- over(identity, own)

  # The data alone: spread with n - 2 degrees of freedom, estimates about the prior's mean.
  fit <- lm.fit(x, y)
  rss <- sum(fit$residuals^2)
  c0 <- solve(crossprod(x))
  alone <- function(s) -(n - 2 + 1) * log(s) - rss / (2 * s^2)
  d <- fit$coefficients - m
  single <- sapply(1:2, function(j) if (!known[j]) NA else
    over(function(s) 2 * pnorm(-abs(d[j]) / sqrt(sd0[j]^2 + s^2 * c0[j, j])), alone))
  joint <- over(function(s) {
    v <- s^2 * c0[known, known, drop = FALSE] + diag(sd0[known]^2, sum(known))
    pchisq(sum(d[known] * solve(v, d[known])), sum(known), lower.tail = FALSE)
  }, alone)
  quantities <- c(outer(c("mean", "SD", "95 low", "95 high"), c("constant", "speed"), function(a, b) paste(b, a)),
                  "spread", "constant conflict", "speed conflict", "joint conflict")
  data.frame(case = case, quantity = quantities,
             value = format(c(stats, spread, single, joint), digits = 13, trim = TRUE, scientific = TRUE))
}))
write.csv(subset(out, value != "NA"), "prior-expected.csv", row.names = FALSE, quote = FALSE)
