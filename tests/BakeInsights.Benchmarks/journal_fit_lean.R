# R at its leanest: only the columns needed, solved by cross-products.
library(data.table)
setDTthreads(0)
d <- fread(commandArgs(TRUE)[1],
           select = c("dough_temp_c", "water_g", "flour_g", "yeast_g", "salt_g", "rise_min", "loaf_volume_ml", "loaf_g"))
t <- d$dough_temp_c - 24
h <- 100 * d$water_g / d$flour_g - 65
solve_for <- function(x, response) {
  cross <- crossprod(x)
  b <- solve(cross, crossprod(x, response))
  left <- response - x %*% b
  variance <- sum(left^2) / (nrow(x) - ncol(x))
  cbind(b, sqrt(variance * diag(solve(cross))))
}
print(solve_for(cbind(1, t, log(100 * d$yeast_g / d$flour_g), h, 100 * d$salt_g / d$flour_g), log(d$rise_min)))
print(solve_for(cbind(1, h, t, h^2, t^2, h * t), d$loaf_volume_ml / d$loaf_g))
