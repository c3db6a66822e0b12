# Writes what the tests of regression with a prior of everything compare with. Needs only R itself (4.2 was used).
# Run it in this folder: Rscript full-prior.R
# The rows' own normal distribution is used, n by n, and conditioned; the tested code works with sums of products.
options(digits = 17)

m <- c(20, 3.2); p <- diag(c(8, 0.8)^2)
median <- 10; factor <- 2
cases <- list(none = 0, one = 1, four = 4, all = 50)

out <- do.call(rbind, lapply(names(cases), function(case) {
  data <- head(cars, cases[[case]])
  n <- nrow(data)
  x <- matrix(c(rep(1, n), data$speed - 10), n)
  given <- function(s) {
    if (n == 0) return(list(mu = m, cov = p, log = 0))
    v <- x %*% p %*% t(x) + s^2 * diag(n)
    r <- data$dist - x %*% m
    gain <- p %*% t(x) %*% solve(v)
    list(mu = as.vector(m + gain %*% r), cov = p - gain %*% x %*% p,
         log = -0.5 * as.numeric(determinant(v)$modulus) - 0.5 * sum(r * solve(v, r)))
  }
  u <- log(median) + seq(-8, 8, length.out = 1201) * log(factor)
  g <- lapply(exp(u), given)
  l <- sapply(g, `[[`, "log") - ((u - log(median)) / log(factor))^2 / 2
  w <- exp(l - max(l)) / sum(exp(l - max(l)))
  mu <- function(a) sapply(g, function(k) sum(a * k$mu))
  sd <- function(a) sapply(g, function(k) sqrt(sum(a * (k$cov %*% a))))
  ends <- function(f, d) sapply(c(0.025, 0.975), function(q)
    uniroot(function(v) sum(w * pnorm(v, f, d)) - q, c(-500, 500), tol = 1e-11)$root)
  line <- function(a, name, extra = 0) {
    f <- mu(a); d <- sqrt(sd(a)^2 + extra)
    data.frame(quantity = paste(name, c("mean", "SD", "low", "high")),
               value = c(sum(w * f), sqrt(sum(w * (d^2 + f^2)) - sum(w * f)^2), ends(f, d)))
  }
  # The speed at which the mean distance is 45 ft.
  passed <- function(v) { a <- c(1, v - 10); sum(w * pnorm(mu(a), 45, sd(a))) }
  inverse <- sapply(c(0.5, 0.025, 0.975), function(q)
    tryCatch(uniroot(function(v) passed(v) - q, c(-990, 1010), tol = 1e-11)$root, error = function(e) NA))
  cbind(case = case, rbind(
    line(c(1, 0), "constant"), line(c(0, 1), "speed"), line(c(1, 5), "new", exp(2 * u)),
    data.frame(quantity = c("spread", "inverse", "inverse low", "inverse high"), value = c(sum(w * exp(u)), inverse))))
}))
out <- subset(out, !is.na(value))
out$value <- format(out$value, digits = 13, trim = TRUE, scientific = TRUE)
write.csv(out, "full-prior-expected.csv", row.names = FALSE, quote = FALSE)
write.csv(data.frame(speed = cars$speed, distance = cars$dist), "full-prior.csv", row.names = FALSE, quote = FALSE)
